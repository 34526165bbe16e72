using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;

namespace Runup.Commissioning.Tests.Bench;

/// <summary>A person on the bench who does and confirms what is asked, unless told otherwise.</summary>
internal sealed class BenchPerson(TimeProvider time) : IFirstRunPerson
{
    internal List<ToConfirm> Asked { get; } = [];

    internal HashSet<string> Declines { get; } = new(StringComparer.Ordinal);

    internal Func<ToConfirm, PersonSays?> Says { get; set; } = _ => null;

    internal Func<Task<PersonSays>> CyclesPower { get; set; } = () => Task.FromResult<PersonSays>(new PersonSays.Yes("A. Person"));

    internal Action<RunHold, HoldRequest>? OnHold { get; set; }

    /// <summary>As if the process that beats were gone.</summary>
    internal bool Silence { get; set; }

    internal List<HoldRequest> Holds { get; } = [];

    public Task<PersonSays> Confirm(ToConfirm thing, CancellationToken cancellation)
    {
        Asked.Add(thing);
        return Task.FromResult(Says(thing) ?? (Declines.Contains(thing.What)
            ? new PersonSays.No("not so")
            : new PersonSays.Yes("A. Person", thing.NeedsNote ? "red button at the door" : null)));
    }

    public Task<PersonSays> PowerCycle(CancellationToken cancellation) => CyclesPower();

    public Task<RunHold?> Hold(HoldRequest request, CancellationToken cancellation)
    {
        Holds.Add(request);
        var hold = new RunHold(time);
        hold.Beat();
        var timer = time.CreateTimer(_ =>
        {
            if (!Silence)
            {
                hold.Beat();
            }
        }, null, RunHold.Period, RunHold.Period);
        hold.Lost.Register(timer.Dispose);
        OnHold?.Invoke(hold, request);
        return Task.FromResult<RunHold?>(hold);
    }
}
