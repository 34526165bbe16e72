using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.FirstRun;

/// <summary>What the record tells of settings that an earlier guided run changed for its time and did not put back.</summary>
public sealed record FirstRunHistory
{
    private FirstRunHistory()
    {
    }

    /// <summary>Nothing recorded.</summary>
    public static FirstRunHistory Empty { get; } = new();

    /// <summary>The job's own values of what is changed at present.</summary>
    public ParameterValues Own { get; private init; } = ParameterValues.Empty;

    private bool SettingUp { get; init; }

    /// <summary>Folds a set's record, oldest first.</summary>
    public static FirstRunHistory Of(IEnumerable<Recorded> record) => record.Aggregate(Empty, (history, entry) => history.And(entry.Body));

    /// <summary>This history and one entry of the record more.</summary>
    public FirstRunHistory And(RecordBody body) => body switch
    {
        RecordBody.StepBegun begun => this with { SettingUp = string.Equals(begun.Step, GuidedSettings.SetUpStep, StringComparison.Ordinal) },
        RecordBody.WriteIntended { Before: { } before } intended when SettingUp && Own[intended.Parameter] is null => this with { Own = Own.With(intended.Parameter, before) },
        RecordBody.StepEnded { Outcome: "passed" } ended when string.Equals(ended.Step, GuidedSettings.PutBackStep, StringComparison.Ordinal) => Empty,
        RecordBody.StepEnded => this with { SettingUp = false },

        // A sheet entered since then is the job's own.
        RecordBody.EntryEnded => Empty,
        _ => this,
    };
}
