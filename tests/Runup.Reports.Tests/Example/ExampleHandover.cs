using Runup.Commissioning.Checks;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;

namespace Runup.Reports.Tests.Example;

/// <summary>Handovers of the pump.</summary>
internal static class ExampleHandover
{
    public static IReadOnlyList<PlannedStep> Steps { get; } =
    [
        new("signals", "Signals are rung out, nothing turns."),
        new("standstill", "The drive is read at standstill: state, DC bus, no current."),
        new("bus-loss-proof", "At 5 Hz, uncoupled, renewals are withheld on purpose: the drive must begin to stop by itself within 1 s."),
        new("uncoupled-5-hz", "5 Hz, uncoupled, with readings at each."),
        new("uncoupled-range", "12.5, 25, 37.5, 50 Hz, uncoupled, with readings at each."),
        new("coupled-ramps", "Up to the highest frequency and down again on the drive's ramps, coupled."),
        new("coupled-range", "12.5, 25, 37.5, 50 Hz, coupled, with readings at each."),
    ];

    public static CheckReport Clean { get; } = new(
        [
            new CheckResult.Satisfied("plate.power-unit", "7.5 kW agrees with 400 V, 14.4 A, cos φ 0.83 and 90.4 % within 0.4 %."),
            new CheckResult.Satisfied("plate.speed", "1460 rpm is 2.7 % below the 1500 rpm of 4 poles at 50 Hz."),
            new CheckResult.Violated("machine.low-speed-cooling", Severity.Note, Stage.Coupled, new Basis.CommonPractice("fan on the shaft: half the torque at a fifth of the speed"))
            {
                Title = "Below 10 Hz the motor's own fan cools little",
                Explanation = "With a quadratic load there is hardly any torque down there, so that it does not matter as long as the pump is run from 20 Hz up.",
                Remedy = "Keep the lowest frequency at 20 Hz.",
                Value = 20,
                Limit = 10,
                Unit = "Hz",
            },
            new CheckResult.Undecided("drive.panel-heat", "size of the panel and its ventilation (place)", "whether the drive gets too warm beside others"),
        ],
        [
            new("ratio of stator to rotor leakage reactance", "1", "IEEE 112, design A", FromMemory: true),
            new("inertia of the coupling", "left out", "common practice, no source", FromMemory: false),
        ]);

    public static CheckReport Blocked { get; } = new(
        [
            .. Clean.Results,
            new CheckResult.Violated("machine.deceleration", Severity.Blocker, Stage.Coupled, new Basis.Physics("E = ½·J·ω²"))
            {
                Title = "The stop asked for lifts the DC bus over its trip",
                Explanation = "From 50 Hz in 1 s the pump feeds back 1.8 kJ, and the capacitors take 91 J up to the trip at 820 V.",
                Remedy = "Ask for 12 s, or fit a braking resistor of 40 Ω or more.",
                Value = 1,
                Limit = 3.1,
                Unit = "s",
            },
            new CheckResult.Violated("cable.peak-voltage", Severity.Caution, Stage.Coupled, new Basis.Standard("IEC TS 60034-25, figure on permissible peak voltage", Recalled: true))
            {
                Title = "Voltage peaks at the motor's terminals come near to what its insulation bears",
                Explanation = "On 65 m of cable the edges are reflected nearly in full: 1.13 kV between lines.",
                Remedy = "See the motor maker's figure, or fit a dv/dt filter.",
                Value = 1130,
                Limit = 1350,
                Unit = "V",
            },
        ],
        Clean.Assumptions);

    public static HandoverModel Whole(string title = "Seawater intake pump 1") => HandoverModel.Of(Sources(ExampleRecord.Whole(), Clean, title));

    public static HandoverModel Troubled() => HandoverModel.Of(Sources(ExampleRecord.CutOff(), Blocked) with { JobSha256 = new string('1', 64) });

    public static HandoverModel Photographed(string photo)
    {
        var pump = ExampleJob.Pump();
        var plate = pump.Motor.Plate;
        return HandoverModel.Of(Sources([], Clean) with
        {
            Context = JobContext.For(pump with
            {
                Motor = pump.Motor with { Plate = plate with { Output = plate.Output with { Photo = photo }, Current = plate.Current with { Photo = photo } } },
                Photos = [new("panel.jpg", "the panel")],
            }, ExampleDrive.Size.Rating),
            Photos = [new(photo, new string('e', 64), new byte[] { 0xFF, 0xD8 }, 1600, 1200)],
        });
    }

    public static HandoverModel Empty() => HandoverModel.Of(Sources([], new CheckReport([], [])) with { Steps = [], Plan = new([]), Sheet = [] });

    public static HandoverSources Sources(IReadOnlyList<Recorded> record, CheckReport checks, string title = "Seawater intake pump 1") => new()
    {
        Context = JobContext.For(ExampleJob.Pump(title), ExampleDrive.Size.Rating),
        Profile = ExampleDrive.Tern,
        Size = ExampleDrive.Size,
        Checks = checks,
        Plan = ExampleDrive.Plan,
        Sheet = ExampleDrive.Sheet,
        Record = record,
        Steps = Steps,
        WrittenAt = new DateTimeOffset(2026, 5, 4, 11, 5, 0, TimeSpan.FromHours(2)),
        WrittenBy = "Runup 0.1.0",
    };
}
