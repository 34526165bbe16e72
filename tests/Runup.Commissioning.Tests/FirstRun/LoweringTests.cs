using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Rehearsal;
using Runup.Commissioning.Tests.Checks;
using Runup.Profiles;

namespace Runup.Commissioning.Tests.FirstRun;

/// <summary>A hoist that goes both ways is seen lowering too, with its load driving the motor.</summary>
public sealed class LoweringTests
{
    private static readonly JobContext Hoist = DemoFiles.Context("gh-501.job.yaml");
    private static readonly DriveSize Size = DemoFiles.TernSize("5.5-400");
    private static readonly SettingsPlan Settings = SettingsPlan.For(Hoist);
    private static readonly FirstRunPredictions Predictions = FirstRunPredictions.Of(Hoist, Settings, DemoFiles.Tern, Size)!;

    [Fact]
    public void The_steps_lift_first_and_then_lower()
    {
        var watched = FirstRunPlan.For(Task(Settings)).Steps.OfType<FirstRunStep.Watched>().ToList();
        watched.Select(s => (s.FrequencyHz, s.Rotation)).ShouldBe(
        [
            (12.5, Rotation.Forward), (25, Rotation.Forward), (37.5, Rotation.Forward), (50, Rotation.Forward),
            (12.5, Rotation.Reverse), (25, Rotation.Reverse), (37.5, Rotation.Reverse), (50, Rotation.Reverse),
        ]);
        watched.Select(s => s.Id).Distinct().Count().ShouldBe(8);
    }

    [Fact]
    public void Where_only_forward_is_permitted_nothing_is_lowered()
    {
        var forward = Settings.Values.With(Runup.Settings.Setting.PermittedDirection, "forward");
        FirstRunPlan.For(Task(Settings) with { Plan = forward }).Steps.OfType<FirstRunStep.Watched>().ShouldAllBe(s => s.Rotation == Rotation.Forward);
    }

    [Fact]
    public void Lowering_the_motor_brakes_above_its_field_s_speed_and_with_the_sign_of_lifting()
    {
        // Weight 998 kg · 9.81 m/s² · 0.127 m = 1243 N·m at the drum; down through gear 90 and 76 %: 10.5 N·m of the motor's 26.3 N·m, less its friction.
        var torque = Predictions.Steady(ReadingKind.Torque, -50, Coupling.Coupled).Value!.Value;
        torque.ShouldBeInRange(36, 40);
        Predictions.Steady(ReadingKind.Torque, 50, Coupling.Coupled).Value!.Value.ShouldBeGreaterThan(torque * 1.5);
        Predictions.Steady(ReadingKind.Speed, -50, Coupling.Coupled).Value!.Value.ShouldBeInRange(-1530, -1501);
        Predictions.Steady(ReadingKind.OutputCurrent, -50, Coupling.Coupled).Value!.Value.ShouldBeLessThan(Predictions.Steady(ReadingKind.OutputCurrent, 50, Coupling.Coupled).Value!.Value);
    }

    [Fact]
    public void Lowering_the_bus_may_rise_to_the_chopper_and_lifting_it_may_not()
    {
        Predictions.Steady(ReadingKind.DcBusVoltage, -50, Coupling.Coupled).Within(755).ShouldBe(true);
        Predictions.Steady(ReadingKind.DcBusVoltage, -50, Coupling.Coupled).Within(790).ShouldBe(false);
        Predictions.Steady(ReadingKind.DcBusVoltage, 50, Coupling.Coupled).Within(755).ShouldBe(false);
    }

    private static FirstRunTask Task(SettingsPlan plan) => new()
    {
        Job = Hoist.Job,
        Profile = DemoFiles.Tern,
        Size = Size,
        Plan = plan.Values,
        Sheet = EntrySheet.From(Profiles.Sheet.For(DemoFiles.Tern, Size, plan.Values, ParameterValues.Defaults(DemoFiles.Tern, Size))),
        Predictions = Predictions,
    };
}
