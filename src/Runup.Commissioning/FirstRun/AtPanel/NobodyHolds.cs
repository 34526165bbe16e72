using Runup.Commissioning.Entry;

namespace Runup.Commissioning.FirstRun.AtPanel;

/// <summary>A person who confirms, and of whom no hold can be had: Runup runs no motor here.</summary>
internal sealed class NobodyHolds(IPerson person) : IFirstRunPerson
{
    public Task<PersonSays> Confirm(ToConfirm thing, CancellationToken cancellation) => person.Confirm(thing, cancellation);

    public Task<PersonSays> PowerCycle(CancellationToken cancellation) => person.PowerCycle(cancellation);

    public Task<RunHold?> Hold(HoldRequest request, CancellationToken cancellation) => Task.FromResult<RunHold?>(null);
}
