using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Engineering.Loads;
using Runup.Profiles;
using Runup.Quantities;
using Runup.SimulatedDrive;

namespace Runup.Cli.Demo;

/// <summary>The demo plays the person beside a machine that is not there: it does what is asked at the simulated drive, holds, and says so.</summary>
internal sealed class DemoPerson(DriveHost host, DrivenMachine machine, TimeProvider time) : IFirstRunPerson
{
    private const string By = "the demo, which plays the person";
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(100);
    private static readonly TimeSpan Settling = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private Rotation turning = Rotation.Forward;

    public int Confirmations { get; private set; }

    /// <summary>The steps of the first run, once they are known: at which frequency the machine is run from its own control.</summary>
    public FirstRunPlan? Plan { get; set; }

    public async Task<PersonSays> Confirm(ToConfirm thing, CancellationToken cancellation)
    {
        switch (thing.What)
        {
            case "coupled":
                await Standstill(cancellation);
                host.Drive.Couple(machine);
                break;
            case "steady-from-own-control" when await RunAtPanel(thing.Step, cancellation) is { } why:
                return new PersonSays.No(why);
            case "trip-of-the-proof-reset-at-the-drive":
                host.Drive.ResetAtPanel();
                break;
            case "go-on-outside-of-what-is-expected":
            case "step-again":
                return new PersonSays.No("the demo stops where something is not as expected");
            default:
                break;
        }

        Confirmations++;
        return new PersonSays.Yes(By, thing.NeedsNote ? "simulated; the stop device is the demo's own" : null);
    }

    public async Task<PersonSays> PowerCycle(CancellationToken cancellation)
    {
        await host.PowerCycle();
        return new PersonSays.Yes(By);
    }

    public Task<RunHold?> Hold(HoldRequest request, CancellationToken cancellation)
    {
        var hold = new RunHold(time);
        hold.Beat();
        var beats = time.CreateTimer(_ => hold.Beat(), null, RunHold.Period, RunHold.Period);
        hold.Lost.Register(beats.Dispose);
        return Task.FromResult<RunHold?>(hold);
    }

    /// <summary>Whatever was run at the panel is stopped there.</summary>
    public async Task Leaves(CancellationToken cancellation)
    {
        if (host.Drive.StopAtPanel() is PanelAnswer.Followed)
        {
            await Standstill(cancellation);
        }
    }

    private async Task<string?> RunAtPanel(string step, CancellationToken cancellation)
    {
        var watched = Plan?.Steps.OfType<FirstRunStep.Watched>().FirstOrDefault(s => string.Equals(s.Id, step, StringComparison.Ordinal));
        var (hertz, rotation) = (watched?.FrequencyHz ?? 0, watched?.Rotation ?? Rotation.Forward);
        if (rotation != turning)
        {
            await Leaves(cancellation);
            turning = rotation;
        }

        if (host.Drive.RunAtPanel(ElectricalFrequency.FromHertz(hertz), rotation) is PanelAnswer.Ignored ignored)
        {
            return $"the panel does nothing: {ignored.Why}";
        }

        var begun = time.GetTimestamp();
        while (Math.Abs(Math.Abs(host.Drive.Now.OutputFrequencyHz) - hertz) > 0.01)
        {
            if (time.GetElapsedTime(begun) > Patience)
            {
                return $"run at the panel it did not come to {hertz:0.##} Hz";
            }

            await Task.Delay(Look, time, cancellation);
        }

        await Task.Delay(Settling, time, cancellation);
        return null;
    }

    private async Task Standstill(CancellationToken cancellation)
    {
        while (host.Drive.Now.State != Dynamics.DriveState.Stopped)
        {
            await Task.Delay(Look, time, cancellation);
        }
    }
}
