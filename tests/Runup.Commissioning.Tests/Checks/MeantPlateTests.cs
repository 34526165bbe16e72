using Runup.Commissioning.Plan;
using Runup.Commissioning.Survey;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>A slip of the pen neither raises findings about what is right nor hides what is wrong.</summary>
public sealed class MeantPlateTests
{
    public static TheoryData<string> Slips => [.. All.Select(slip => slip.Id)];

    private static IReadOnlyList<(string Id, Func<PlateSurvey, PlateSurvey> Slip)> All { get; } =
    [
        ("plate.power-unit", plate => plate with { Output = Plates.Output("7.5 hp") }),
        ("plate.base-frequency", plate => plate with { Frequency = new(ElectricalFrequency.FromHertz(60)) }),
        ("plate.poles", plate => plate with { Poles = new(6) }),
        ("plate.speed", plate => plate with { Speed = new(ShaftSpeed.FromRpm(1500)) }),
        ("plate.line-phase-current", plate => plate with { Current = new(LineCurrent.FromAmperes(24.9)) }),
        ("plate.voltage-connection", plate => plate with { Voltage = new(LineVoltage.FromVolts(230)), OtherRatings = [] }),
    ];

    [Theory]
    [MemberData(nameof(Slips))]
    public void One_slip_is_one_finding(string id)
    {
        var report = Jobs.Pump().With(All.Single(slip => slip.Id == id).Slip).Judge();
        report.Findings.Select(finding => finding.Id).ShouldBe([id]);
        report.Assumptions.ShouldContain(assumption => assumption.Source == $"finding {id}");
    }

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_ramp_too_short_and_a_drive_too_small_are_found_beside_it(string id)
    {
        var job = Jobs.Pump().With(All.Single(slip => slip.Id == id).Slip)
            .With((OperationSurvey o) => o with { Acceleration = new(Duration.FromSeconds(0.2)), Deceleration = new(Duration.FromSeconds(0.5)) });
        job.Judge(5.5).Findings.Select(finding => finding.Id).ShouldBe(
            [id, "drive.current", "machine.acceleration", "machine.deceleration", "machine.braking-needed"], ignoreOrder: true);
    }

    [Fact]
    public void The_plan_and_the_circuit_stay_those_of_the_plate_as_printed()
    {
        var context = Jobs.Pump().With((PlateSurvey plate) => plate with { Output = Plates.Output("7.5 hp") }).Context();
        SettingsPlan.For(context).Values.Number(Setting.MotorRatedPower)!.Value.ShouldBe(7.5 * Plates.Hp, 1e-6);
        context.Nameplate!.Output.Watts.ShouldBe(7.5 * Plates.Hp, 1e-6);
        context.Meant.Nameplate!.Output.Watts.ShouldBe(7500, 1e-6);
    }

    [Fact]
    public void Without_a_slip_nothing_is_reckoned_twice()
    {
        var context = Jobs.Pump().Context();
        context.Meant.ShouldBeSameAs(context.Printed);
    }
}
