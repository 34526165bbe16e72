using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.SimulatedDrive;

namespace Runup.Acceptance.Tests.OverTheWire;

/// <summary>A person who confirms everything up to a question, and who holds until something happens.</summary>
internal sealed class TestPerson(DriveHost host) : IFirstRunPerson
{
    /// <summary>The question that is answered with no.</summary>
    internal string StopsAt { get; init; } = "direction-right";

    /// <summary>The step of which nothing is confirmed.</summary>
    internal string? StopsBefore { get; init; }

    /// <summary>Called as each hold begins, with the step's id.</summary>
    internal Action<string, RunHold, IDisposable>? Holding { get; init; }

    /// <summary>What the person does before a question is answered with yes.</summary>
    internal Func<ToConfirm, Task>? Does { get; init; }

    internal List<string> Confirmed { get; } = [];

    public async Task<PersonSays> Confirm(ToConfirm thing, CancellationToken cancellation)
    {
        Confirmed.Add(thing.What);
        await (Does?.Invoke(thing) ?? Task.CompletedTask);
        return thing.What == StopsAt || thing.Step == StopsBefore || thing.What is "step-again" or "go-on-outside-of-what-is-expected"
            ? new PersonSays.No("the test ends here")
            : new PersonSays.Yes("A. Tester", thing.NeedsNote ? "beside the door" : null);
    }

    public async Task<PersonSays> PowerCycle(CancellationToken cancellation)
    {
        await host.PowerCycle();
        return new PersonSays.Yes("A. Tester");
    }

    public Task<RunHold?> Hold(HoldRequest request, CancellationToken cancellation)
    {
        var hold = new RunHold(TimeProvider.System);
        hold.Beat();
        var beats = new Timer(_ => hold.Beat(), null, RunHold.Period, RunHold.Period);
        hold.Lost.Register(beats.Dispose);
        Holding?.Invoke(request.Step, hold, beats);
        return Task.FromResult<RunHold?>(hold);
    }
}
