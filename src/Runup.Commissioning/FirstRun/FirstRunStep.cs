using Runup.Commissioning.Entry;
using Runup.Profiles;

namespace Runup.Commissioning.FirstRun;

/// <summary>A step of the first run; a closed set. Each stands alone: it begins and ends with the motor at standstill.</summary>
public abstract record FirstRunStep
{
    private FirstRunStep(string id, string title, IReadOnlyList<ToConfirm> checks)
    {
        Id = id;
        Title = title;
        Checks = checks;
    }

    /// <summary>The step's id in the record.</summary>
    public string Id { get; }

    /// <summary>What is done, in a sentence.</summary>
    public string Title { get; }

    /// <summary>What the person beside the machine confirms first.</summary>
    public IReadOnlyList<ToConfirm> Checks { get; }

    /// <summary>Signals are rung out by the person; nothing is sent.</summary>
    public sealed record Signals(string Id, string Title, IReadOnlyList<ToConfirm> Checks) : FirstRunStep(Id, Title, Checks);

    /// <summary>Readings at standstill.</summary>
    public sealed record Standstill(string Id, string Title, IReadOnlyList<ToConfirm> Checks) : FirstRunStep(Id, Title, Checks);

    /// <summary>What the guided first run needs is set and read back: the bus as source, its time-out and action.</summary>
    public sealed record SetUp(string Id, string Title, IReadOnlyList<ToConfirm> Checks) : FirstRunStep(Id, Title, Checks);

    /// <summary>Renewals are withheld on purpose: does the drive stop by itself?</summary>
    public sealed record LossProof(string Id, string Title, IReadOnlyList<ToConfirm> Checks) : FirstRunStep(Id, Title, Checks);

    /// <summary>Runs at one frequency after the other, ascending, with readings at each.</summary>
    /// <param name="Id">The step's id.</param>
    /// <param name="Title">What is done.</param>
    /// <param name="Checks">What is confirmed first.</param>
    /// <param name="FrequenciesHz">The frequencies.</param>
    /// <param name="Coupling">Whether the machine is coupled.</param>
    /// <param name="Rotation">Direction.</param>
    public sealed record Steady(string Id, string Title, IReadOnlyList<ToConfirm> Checks, IReadOnlyList<double> FrequenciesHz, Coupling Coupling, Rotation Rotation) : FirstRunStep(Id, Title, Checks);

    /// <summary>Runs straight up to a frequency and stops from there.</summary>
    /// <param name="Id">The step's id.</param>
    /// <param name="Title">What is done.</param>
    /// <param name="Checks">What is confirmed first.</param>
    /// <param name="FrequencyHz">The frequency.</param>
    /// <param name="Coupling">Whether the machine is coupled.</param>
    public sealed record Ramps(string Id, string Title, IReadOnlyList<ToConfirm> Checks, double FrequencyHz, Coupling Coupling) : FirstRunStep(Id, Title, Checks);

    /// <summary>The person couples the machine.</summary>
    public sealed record Couple(string Id, string Title, IReadOnlyList<ToConfirm> Checks) : FirstRunStep(Id, Title, Checks);

    /// <summary>The person sets back what was set to run the motor from where it was run.</summary>
    public sealed record AsEntered(string Id, string Title, IReadOnlyList<ToConfirm> Checks) : FirstRunStep(Id, Title, Checks);

    /// <summary>The person runs the machine from its own control; it is only read.</summary>
    /// <param name="Id">The step's id.</param>
    /// <param name="Title">What is done.</param>
    /// <param name="Checks">What is confirmed first.</param>
    /// <param name="FrequencyHz">The frequency.</param>
    /// <param name="Rotation">Direction; a hoist lowers in reverse.</param>
    public sealed record Watched(string Id, string Title, IReadOnlyList<ToConfirm> Checks, double FrequencyHz, Rotation Rotation) : FirstRunStep(Id, Title, Checks);
}
