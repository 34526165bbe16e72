using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;

namespace Runup.Commissioning.FirstRun;

/// <summary>That all checks of a step were confirmed by name; there is no other way to have one.</summary>
public sealed class StepChecks
{
    private StepChecks(string step, IReadOnlyDictionary<string, string> notes)
    {
        Step = step;
        Notes = notes;
    }

    /// <summary>The step.</summary>
    public string Step { get; }

    /// <summary>What the person said beside, by the id of the check.</summary>
    public IReadOnlyDictionary<string, string> Notes { get; }

    /// <summary>Asks the person for each check; the checks, or why they are not all confirmed.</summary>
    internal static async Task<(StepChecks? Checks, string? Why)> Confirm(FirstRunStep step, string tag, IPerson person, IRecords records, CancellationToken cancellation)
    {
        var notes = new Dictionary<string, string>(StringComparer.Ordinal);
        return await Confirming.All(step.Checks, tag, person, records, notes, cancellation) is { } why ? (null, why) : (new(step.Id, notes), null);
    }
}
