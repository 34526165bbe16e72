using Runup.Commissioning.Entry;

namespace Runup.Commissioning.FirstRun;

/// <summary>The person beside the machine during the guided first run.</summary>
/// <remarks>Things to do, such as coupling, are asked for by <see cref="IPerson.Confirm"/>: the person does them and confirms.</remarks>
public interface IFirstRunPerson : IPerson
{
    /// <summary>Asks the person to take hold and keep it; returns at the first beat, or null where the person does not want to.</summary>
    Task<RunHold?> Hold(HoldRequest request, CancellationToken cancellation);
}

/// <summary>What a person is told beside a control that can run a motor.</summary>
/// <param name="Step">The step's id.</param>
/// <param name="Title">What will happen.</param>
/// <param name="LimitHz">Highest frequency.</param>
/// <param name="Warning">What is said beside every such control.</param>
public sealed record HoldRequest(string Step, string Title, double LimitHz, string Warning);
