using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Engineering.Loads;
using Runup.SimulatedDrive;

namespace Runup.Cli.Demo;

/// <summary>The demo plays the person beside a machine that is not there: it does what is asked at the simulated drive, holds, and says so.</summary>
internal sealed class DemoPerson(DriveHost host, DrivenMachine machine, TimeProvider time) : IFirstRunPerson
{
    private const string By = "the demo, which plays the person";

    public int Confirmations { get; private set; }

    public async Task<PersonSays> Confirm(ToConfirm thing, CancellationToken cancellation)
    {
        switch (thing.What)
        {
            case "coupled":
                await Standstill(cancellation);
                host.Drive.Couple(machine);
                break;
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

    /// <summary>The motor alone, as it turns before the machine is coupled.</summary>
    internal static DrivenMachine Alone(DrivenMachine machine) => new()
    {
        Load = new LoadCurve.Constant(default),
        MachineInertia = default,
        MotorInertia = machine.MotorInertia,
    };

    private async Task Standstill(CancellationToken cancellation)
    {
        while (host.Drive.Now.State != Dynamics.DriveState.Stopped)
        {
            await Task.Delay(TimeSpan.FromMilliseconds(100), time, cancellation);
        }
    }
}
