using Runup.Commissioning.Plan;
using Runup.Commissioning.Rehearsal;
using Runup.Commissioning.Tests.Checks;
using Runup.Dynamics;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Rehearsal;

/// <summary>The sets of the demo site are sound between drive and motor: what watches there says nothing.</summary>
public sealed class NoFalseTripTests
{
    private static readonly TripCause[] Watched = [TripCause.MotorPhase, TripCause.EarthFault, TripCause.ShortCircuit, TripCause.Overspeed];

    public static TheoryData<string> Jobs => [.. DemoFiles.Site];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void No_set_of_the_site_is_tripped_by_what_watches_its_output(string file)
    {
        var context = DemoFiles.Context(file);
        var (plan, profile) = (SettingsPlan.For(context), DemoFiles.ProfileOf(context.Job));
        var held = JobRehearsal.Held(plan, profile, profile.FindSize(context.Job.Drive.Size.Value)!);
        var top = context.Job.Operation.MaximumFrequency.Value.Hertz;
        foreach (var (coupled, stopping) in new[] { (true, "ramp"), (false, "dc-braking") })
        {
            // Without earth a fault to earth carries no current: the motor is sound, and each phase is looked at.
            var system = RehearsalSystem.Of(context)! with { SupplyEarthed = false };
            system = coupled ? system : system with { Machine = RehearsalSystem.Uncoupled(system.Machine) };
            var drive = new DriveSimulation(system, ControlSettings.From(held.With(Setting.StoppingMethod, stopping).With(Setting.PermittedDirection, "both"), context.Rating))
            {
                Fault = new OutputFault.ToEarth(OutputPhase.U, default),
            };
            foreach (var hertz in new[] { top, 2, -top, 0 })
            {
                drive.Order = new DriveOrder(hertz != 0, hertz, StopKind.ByMethod);
                for (var i = 0; i < 1500; i++)
                {
                    drive.Tick();
                    drive.Readings.Trip.ShouldNotBeOneOf(Watched, $"{file}, {stopping}, {hertz} Hz");
                }

                drive.ResetTrip();
            }
        }
    }
}
