using System.Text.Json.Serialization;

namespace Runup.Commissioning.Records;

/// <summary>What an entry of the record says; a closed set.</summary>
/// <remarks>Kinds and members may be added, none renamed: what is on disk stays readable. A new member is nullable, and left away on disk where it is null. A new kind needs its line below; a test says so.</remarks>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(JobTaken), "job-taken")]
[JsonDerivedType(typeof(Confirmed), "confirmed")]
[JsonDerivedType(typeof(ParametersRead), "parameters-read")]
[JsonDerivedType(typeof(ParameterSeen), "parameter-seen")]
[JsonDerivedType(typeof(EntryBegun), "entry-begun")]
[JsonDerivedType(typeof(WriteIntended), "write-intended")]
[JsonDerivedType(typeof(WriteEnded), "write-ended")]
[JsonDerivedType(typeof(StoreAsked), "store-asked")]
[JsonDerivedType(typeof(PowerCycleSeen), "power-cycle-seen")]
[JsonDerivedType(typeof(EntryEnded), "entry-ended")]
[JsonDerivedType(typeof(StepBegun), "step-begun")]
[JsonDerivedType(typeof(ReadingTaken), "reading-taken")]
[JsonDerivedType(typeof(Trend), "trend")]
[JsonDerivedType(typeof(StepEnded), "step-ended")]
[JsonDerivedType(typeof(ControlLeft), "control-left")]
[JsonDerivedType(typeof(HandoverWritten), "handover-written")]
[JsonDerivedType(typeof(FindingAccepted), "finding-accepted")]
[JsonDerivedType(typeof(PhotoKept), "photo-kept")]
public abstract record RecordBody
{
    private RecordBody()
    {
    }

    /// <summary>The job file as it was when work began.</summary>
    /// <param name="JobText">The file's text.</param>
    /// <param name="Sha256">Its checksum in hex.</param>
    /// <param name="Clock">What keeps the time of this entry and of those after it, in words; null in records of before it was kept.</param>
    public sealed record JobTaken(string JobText, string Sha256, string? Clock = null) : RecordBody;

    /// <summary>A person confirmed a thing by name.</summary>
    /// <param name="What">The thing, such as <c>no-run-command-pending</c>.</param>
    /// <param name="By">The person; the demo says that the program plays the person.</param>
    /// <param name="Note">A figure or remark, or null.</param>
    public sealed record Confirmed(string What, string By, string? Note) : RecordBody;

    /// <summary>All parameters of a drive as they were read.</summary>
    /// <param name="Moment">as-found, before-entry, after-write, after-power-cycle, read or as-left.</param>
    /// <param name="Identity">What the drive says it is.</param>
    /// <param name="Values">Raw value by parameter number; null where it could not be read. By eye only those that were looked at.</param>
    /// <param name="SeenBy">The person who read them from the drive's display; null where they came over a link.</param>
    public sealed record ParametersRead(string Moment, string Identity, IReadOnlyDictionary<string, long?> Values, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? SeenBy = null) : RecordBody;

    /// <summary>One parameter as a person read it from the drive's display, while a look at several goes on.</summary>
    /// <param name="Moment">As of the reading that it becomes part of.</param>
    /// <param name="Parameter">Parameter number.</param>
    /// <param name="Raw">Raw value; null where it was left out.</param>
    /// <param name="SeenBy">The person.</param>
    /// <param name="Why">Why it was left out, or null.</param>
    public sealed record ParameterSeen(string Moment, string Parameter, long? Raw, string SeenBy, string? Why) : RecordBody;

    /// <summary>An entry of a sheet begins or goes on.</summary>
    /// <param name="SheetSha256">Checksum of the sheet.</param>
    /// <param name="Lines">Parameters to write, in order.</param>
    /// <param name="Resumed">Whether an earlier one was cut off.</param>
    public sealed record EntryBegun(string SheetSha256, IReadOnlyList<string> Lines, bool Resumed) : RecordBody;

    /// <summary>A write is about to be sent.</summary>
    /// <param name="Parameter">Parameter number.</param>
    /// <param name="Before">Raw value read just before.</param>
    /// <param name="Raw">Raw value to be written.</param>
    public sealed record WriteIntended(string Parameter, long? Before, long Raw) : RecordBody;

    /// <summary>What came of a write.</summary>
    /// <param name="Parameter">Parameter number.</param>
    /// <param name="Outcome">verified, verified-by-eye, differs, refused or unverified.</param>
    /// <param name="ReadBack">Raw value read or seen after it, or null.</param>
    /// <param name="Why">Why it is not verified, or null.</param>
    /// <param name="SeenBy">The person who entered it by hand and looked; null where it went over a link.</param>
    public sealed record WriteEnded(string Parameter, string Outcome, long? ReadBack, string? Why, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? SeenBy = null) : RecordBody;

    /// <summary>The drive was told to keep its parameters.</summary>
    /// <param name="Outcome">accepted, refused, unanswered, not-needed, or by-hand where a person said so at the drive.</param>
    public sealed record StoreAsked(string Outcome) : RecordBody;

    /// <summary>The drive was seen to lose power and come back.</summary>
    /// <param name="SeenBy">The person on whose word alone it stands; null where the link saw it.</param>
    public sealed record PowerCycleSeen([property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? SeenBy = null) : RecordBody;

    /// <summary>An entry ended.</summary>
    /// <param name="Verified">How many were proved.</param>
    /// <param name="Failed">Parameters that are not proved, with what came of them.</param>
    /// <param name="ProvedAfterPowerCycle">Whether the values were read again over the link after a power cycle.</param>
    /// <param name="VerifiedByEye">How many a person saw on the drive's display; null where it was entered over a link.</param>
    /// <param name="SeenAfterPowerCycle">Whether a person saw the changed ones again after a power cycle; null as before.</param>
    public sealed record EntryEnded(
        int Verified,
        IReadOnlyDictionary<string, string> Failed,
        bool ProvedAfterPowerCycle,
        [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] int? VerifiedByEye = null,
        [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] bool? SeenAfterPowerCycle = null) : RecordBody;

    /// <summary>A step of the first run begins.</summary>
    /// <param name="Step">The step's id.</param>
    /// <param name="RunBy">The person who runs the motor in it, at the panel or from the machine's own control; null where Runup does, while a person holds.</param>
    public sealed record StepBegun(string Step, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? RunBy = null) : RecordBody;

    /// <summary>A reading held against its prediction.</summary>
    /// <param name="Step">The step's id.</param>
    /// <param name="Quantity">What was read, such as output current.</param>
    /// <param name="Unit">Its unit.</param>
    /// <param name="Expected">Predicted value, or null where nothing is predicted.</param>
    /// <param name="Low">Lowest accepted value, or null.</param>
    /// <param name="High">Highest accepted value, or null.</param>
    /// <param name="Measured">Reading, or null where none came.</param>
    /// <param name="Within">Whether it lies within; null where nothing is accepted or read.</param>
    /// <param name="TypedBy">The person who read it and typed it in; null where it came over a link.</param>
    /// <param name="ReadFrom">From what the person read it, such as the drive's display or a clamp meter; null where it came over a link.</param>
    public sealed record ReadingTaken(
        string Step,
        string Quantity,
        string Unit,
        double? Expected,
        double? Low,
        double? High,
        double? Measured,
        bool? Within,
        [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? TypedBy = null,
        [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? ReadFrom = null) : RecordBody;

    /// <summary>A stretch of a trend: one entry for a stretch, never one for a sample.</summary>
    /// <param name="Step">The step's id.</param>
    /// <param name="Columns">Names with units, such as <c>time_s</c>.</param>
    /// <param name="Rows">Samples, each as long as the columns.</param>
    /// <param name="Predicted">Whether it was computed, not read.</param>
    public sealed record Trend(string Step, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<double>> Rows, bool Predicted) : RecordBody;

    /// <summary>A step of the first run ended.</summary>
    /// <param name="Step">The step's id.</param>
    /// <param name="Outcome">passed, failed, skipped or stopped.</param>
    /// <param name="Remark">What a person should know, or null.</param>
    public sealed record StepEnded(string Step, string Outcome, string? Remark) : RecordBody;

    /// <summary>Who has control when Runup leaves.</summary>
    /// <param name="RunSource">The run source in force.</param>
    /// <param name="Note">What was said to the person.</param>
    public sealed record ControlLeft(string RunSource, string Note) : RecordBody;

    /// <summary>A report was written.</summary>
    /// <param name="File">Name of the file.</param>
    /// <param name="Sha256">Its checksum in hex.</param>
    public sealed record HandoverWritten(string File, string Sha256) : RecordBody;

    /// <summary>A person took responsibility for a finding as it was found.</summary>
    /// <param name="Finding">Id of the check.</param>
    /// <param name="Weight">note, caution, blocker or undecided.</param>
    /// <param name="Title">What was found, in a few words; of an undecided check what was missing.</param>
    /// <param name="Explanation">The same in a sentence; of an undecided check what it would have decided.</param>
    /// <param name="Value">The value found, or null.</param>
    /// <param name="Limit">The limit then, or null.</param>
    /// <param name="Unit">Unit of both, or null.</param>
    /// <param name="By">Who accepted it.</param>
    /// <param name="Because">Why.</param>
    /// <param name="JobSha256">Checksum of the job file that was checked, in hex.</param>
    public sealed record FindingAccepted(
        string Finding, string Weight, string Title, string Explanation, double? Value, double? Limit, string? Unit, string By, string Because, string JobSha256) : RecordBody;

    /// <summary>A photo was made anew of its pixels and kept beside the record.</summary>
    /// <param name="Name">Its name in the job's folder.</param>
    /// <param name="Sha256">Checksum of what is kept, in hex, and its name there.</param>
    /// <param name="OriginalSha256">Checksum of the file that it was made of, in hex.</param>
    public sealed record PhotoKept(string Name, string Sha256, string OriginalSha256) : RecordBody;
}
