using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>Invented jobs that are right: no check may blame them.</summary>
/// <remarks>
/// Plates: the measured 18.5 kW motor of the Modelica Standard Library (IMC_withLosses); efficiencies of IEC 60034-30-1 and NEMA MG 1 tables 12-11 and 12-12; currents that follow from
/// them with usual power factors, or those of NEC table 430.250 (which are on the high side). Several mix hp, kW, 50 Hz and 60 Hz, as sites do.
/// </remarks>
public sealed class SoundJobs(ITestOutputHelper output)
{
    public static TheoryData<string> Names => [.. All.Select(job => job.Name)];

    private static IReadOnlyList<(string Name, PlateSurvey Plate, double Supply_V, double Supply_Hz)> All { get; } =
    [
        ("18.5 kW measured", Plates.Of("18.5 kW", 400, 32.85, 50, 1462.5, 4, 0.898, 90.49, WindingConnection.Delta), 400, 50),
        ("0.37 kW star IE2", Plates.Of("0.37 kW", 400, 1.05, 50, 1380, 4, 0.70, 72.7, WindingConnection.Star) with { OtherRatings = [Plates.Other(230, WindingConnection.Delta, 1.82)] }, 400, 50),
        ("0.55 kW eight poles", Plates.Of("0.55 kW", 400, 2.1, 50, 680, 8, 0.58, 65), 400, 50),
        ("0.75 kW without cos phi and efficiency", Plates.Of("0.75 kW", 400, 1.9, 50, 1395), 400, 50),
        ("1.1 kW two poles", Plates.Of("1.1 kW", 400, 2.3, 50, 2850, 2, 0.84, 82.7), 400, 50),
        ("1.5 kW six poles, no poles printed", Plates.Of("1.5 kW", 400, 3.75, 50, 945, null, 0.70, 82.5), 400, 50),
        ("4 kW delta", Plates.Of("4 kW", 400, 7.9, 50, 1445, 4, 0.82, 88.6, WindingConnection.Delta), 415, 50),
        ("5.5 kW on 380 V", Plates.Of("5.5 kW", 380, 11.3, 50, 1450, 4, 0.83, 89.6), 380, 50),
        ("7.5 kW eight poles", Plates.Of("7.5 kW", 400, 17.4, 50, 725, 8, 0.71, 87.3), 400, 50),
        ("15 kW IE1 of old", Plates.Of("15 kW", 380, 30.5, 50, 1455, 4, 0.85, 88.0), 400, 50),
        ("37 kW IE3 two poles", Plates.Of("37 kW", 400, 63.5, 50, 2955, 2, 0.90, 93.7), 400, 50),
        ("45 kW without efficiency", Plates.Of("45 kW", 400, 80.5, 50, 1480, 4, 0.855), 400, 50),
        ("110 kW IE4", Plates.Of("110 kW", 400, 189, 50, 1489, 4, 0.873, 96.3), 400, 50),
        ("200 kW", Plates.Of("200 kW", 400, 345, 50, 1489, 4, 0.873, 96.0), 400, 50),
        ("1 hp NEC current", Plates.Of("1 hp", 460, 2.1, 60, 1740, 4), 480, 60),
        ("5 hp NEC current", Plates.Of("5 hp", 460, 7.6, 60, 1740), 480, 60),
        ("7.5 hp MG 1", Plates.Of("7.5 hp", 460, 9.3, 60, 1755, 4, 0.82, 91.7, serviceFactor: 1.15), 480, 60),
        ("10 hp in kW", Plates.Of("7.46 kW", 460, 12.4, 60, 1765, 4, 0.82, 91.7), 480, 60),
        ("20 hp six poles", Plates.Of("20 hp", 460, 25.3, 60, 1175, 6, 0.80, 92.4, serviceFactor: 1.15), 460, 60),
        ("50 hp NEC current", Plates.Of("50 hp", 460, 65, 60, 1775, 4), 480, 60),
        ("60 hp", Plates.Of("60 hp", 460, 68, 60, 1780, 4, 0.87, 95.0), 480, 60),
        ("100 hp two poles", Plates.Of("100 hp", 460, 112, 60, 3565, 2, 0.89, 94.1), 480, 60),
        ("50 Hz motor on 60 Hz supply", Plates.Of("11 kW", 400, 20.6, 50, 1470, 4, 0.845, 91.4), 400, 60),
        ("60 Hz motor on 415 V 50 Hz", Plates.Of("15 hp", 460, 18.3, 60, 1765, 4, 0.83, 92.4), 415, 50),
    ];

    [Theory]
    [MemberData(nameof(Names))]
    public void No_check_blames_a_sound_job(string name)
    {
        var (_, plate, supply_V, supply_Hz) = All.Single(job => job.Name == name);
        foreach (var constant in (bool[])[false, true])
        {
            var report = Judge(plate, supply_V, supply_Hz, constant);
            foreach (var finding in report.Findings)
            {
                output.WriteLine($"{(constant ? "constant" : "quadratic")} {finding.Id} {finding.Severity}: {finding.Explanation}");
            }

            report.Findings.ShouldBeEmpty();
        }
    }

    private static CheckReport Judge(PlateSurvey plate, double supply_V, double supply_Hz, bool constant)
    {
        var rated_Nm = plate.Output.Value.TorqueAt(plate.Speed.Value).NewtonMetres;
        var kW = plate.Output.Value.Watts / 1000;
        var pump = Jobs.Pump();
        var job = pump with
        {
            Supply = pump.Supply with { Voltage = new(LineVoltage.FromVolts(supply_V)), Frequency = new(ElectricalFrequency.FromHertz(supply_Hz)) },
            Motor = Plates.Motor(plate with { Cooling = new("IC411") }),
            Machine = new()
            {
                Load = new(constant ? LoadKind.Constant : LoadKind.Quadratic),
                Torque = new(Torque.FromNewtonMetres(0.85 * rated_Nm)),
                AtSpeed = new(plate.Speed.Value),
                BreakawayTorque = new(Torque.FromNewtonMetres((constant ? 0.95 : 0.2) * rated_Nm)),
                Inertia = new(Inertia.FromKilogramSquareMetres(0.008 * Math.Pow(kW, 1.3))),
                LargestSpeed = new(ShaftSpeed.FromRpm(1.1 * plate.Speed.Value.Rpm)),
            },
            Operation = pump.Operation with
            {
                MinimumFrequency = new(ElectricalFrequency.FromHertz(plate.Frequency.Value.Hertz * 0.5)),
                MaximumFrequency = plate.Frequency,
                Acceleration = new(Duration.FromSeconds(40)),
                Deceleration = new(Duration.FromSeconds(constant ? 15 : 60)),
            },
        };
        return CheckList.Judge(JobContext.For(job, Ratings.For(1.03 * plate.Current.Value.Amperes)));
    }
}
