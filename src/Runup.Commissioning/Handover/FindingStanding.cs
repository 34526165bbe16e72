using Runup.Commissioning.Checks;
using Runup.Commissioning.Records;

namespace Runup.Commissioning.Handover;

/// <summary>Who stands for a finding; a closed set.</summary>
public abstract record FindingStanding
{
    private FindingStanding()
    {
    }

    /// <summary>How a finding stands by the record.</summary>
    internal static FindingStanding Of(CheckResult result, RecordStory story) =>
        story.Accepted.FirstOrDefault(a => string.Equals(a.Body.Finding, result.Id, StringComparison.Ordinal)) is not { } accepted ? new Open()
        : accepted.Body.Covers(result) ? new Accepted(accepted)
        : new Outdated(accepted);

    /// <summary>Nobody accepted it.</summary>
    public sealed record Open : FindingStanding;

    /// <summary>A person accepted it as it is.</summary>
    /// <param name="By">The acceptance.</param>
    public sealed record Accepted(At<RecordBody.FindingAccepted> By) : FindingStanding;

    /// <summary>A person accepted it as it was then; it has changed since, and nobody stands for what it is now.</summary>
    /// <param name="Then">The acceptance.</param>
    public sealed record Outdated(At<RecordBody.FindingAccepted> Then) : FindingStanding;
}
