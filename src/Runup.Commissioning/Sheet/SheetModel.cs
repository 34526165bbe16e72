using System.Globalization;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Survey;
using Runup.Profiles;

namespace Runup.Commissioning.Sheet;

/// <summary>What a sheet says, whoever writes it: terminal, page or table.</summary>
public sealed record SheetModel
{
    /// <summary>What to do with a sheet, in order.</summary>
    public IReadOnlyList<string> HowTo =>
    [
        "Enter from top to bottom with the motor stopped: what others depend on comes first, what can start the motor last.",
        "Then store, switch off and on, and look again.",
        .. Already.Any() ? [] : (IEnumerable<string>)[$"Where it says same, the drive {(Found is null ? "shows it from the factory" : "showed it when it was found")}: look, and correct it if it does not."],
        "Numbers have a decimal point; none has a sign for thousands.",
    ];

    /// <summary>Where what is shown as before comes from, in words.</summary>
    public string FoundWords => Found is null
        ? "nobody read the drive, it is taken as from the factory"
        : $"the drive was found as read on {Found.At.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)}";

    /// <summary>Tag of the set.</summary>
    public required string Tag { get; init; }

    /// <summary>What the set is; null where the job does not say.</summary>
    public required string? Title { get; init; }

    /// <summary>The drive with its size.</summary>
    public required string Drive { get; init; }

    /// <summary>When it was written.</summary>
    public required DateTimeOffset WrittenAt { get; init; }

    /// <summary>How much it shows.</summary>
    public required SheetExtent Extent { get; init; }

    /// <summary>
    /// First digits of the checksum over all that the job decides, as the record keeps it at entry; the same for every extent.
    /// Two sheets for one drive with one checksum want the same values.
    /// </summary>
    public required string Checksum { get; init; }

    /// <summary>How the drive was found; null where nobody read it, and then it is taken as from the factory.</summary>
    public SheetFound? Found { get; init; }

    /// <summary>How many parameters were found otherwise than from the factory and are not decided by the job.</summary>
    public IReadOnlyList<string> FoundOtherwise { get; init; } = [];

    /// <summary>The lines that have a parameter, in the order of entry.</summary>
    public required IReadOnlyList<SheetEntry> Entries { get; init; }

    /// <summary>The settings for which the drive has no parameter.</summary>
    public required IReadOnlyList<SheetEntry> Without { get; init; }

    /// <summary>Of the entries those that are gone through with the hand on the keys: where the sheet shows what the job decides, only what has to be turned or chosen.</summary>
    public IEnumerable<SheetEntry> ToEnter => Extent is SheetExtent.Decided ? Entries.Where(e => e.IsOpen) : Entries;

    /// <summary>The others, which show it already: they are only looked at.</summary>
    public IEnumerable<SheetEntry> Already => Extent is SheetExtent.Decided ? Entries.Where(e => !e.IsOpen) : [];

    /// <summary>What the others are called.</summary>
    public string AlreadyWords => Found is null ? "So from the factory already: look, and correct what is not" : "So as found already: look, and correct what is not";

    /// <summary>All lines.</summary>
    public IEnumerable<SheetEntry> Lines => Entries.Concat(Without);

    /// <summary>What it shows, in words.</summary>
    public string ExtentWords => Extent switch
    {
        SheetExtent.Must => "only what it cannot do without",
        SheetExtent.Decided => "all that the job decides",
        SheetExtent.Everything => "every parameter",
        _ => throw new InvalidOperationException("Every extent is told apart."),
    };

    /// <summary>The sheet of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="plan">What it decides.</param>
    /// <param name="profile">The drive's profile.</param>
    /// <param name="size">Its size.</param>
    /// <param name="extent">How much to show.</param>
    /// <param name="writtenAt">When it is written.</param>
    /// <param name="found">How the drive was found; null where it is taken as from the factory.</param>
    /// <param name="effects">What comes of values that the drive cannot hold as wanted, by parameter.</param>
    public static SheetModel Of(
        Job job, SettingsPlan plan, DriveProfile profile, DriveSize size, SheetExtent extent, DateTimeOffset writtenAt, SheetFound? found = null, IReadOnlyDictionary<string, string>? effects = null)
    {
        var factory = ParameterValues.Defaults(profile, size);
        IReadOnlyList<string> otherwise = found is null ? [] : Otherwise(plan, profile, size, found.Values);
        var lines = JobSheet.For(plan, profile, size, factory, extent, found?.Values)
            .Select(row => SheetEntry.Of(row, profile, otherwise, row.Line.Parameter is { } p ? effects?.GetValueOrDefault(p.Number) : null)).ToList();
        return new()
        {
            Tag = job.Tag,
            Title = job.Title,
            Drive = $"{profile.Title}, size {size.Name}{(size.Region is { } region ? $", region {region}" : "")}",
            WrittenAt = writtenAt,
            Extent = extent,
            Checksum = EntrySheet.From(Profiles.Sheet.For(profile, size, plan.Values, factory)).Sha256[..12],
            Found = found,
            FoundOtherwise = otherwise,
            Entries = [.. lines.Where(l => l.IsOffered)],
            Without = [.. lines.Where(l => !l.IsOffered)],
        };
    }

    private static IReadOnlyList<string> Otherwise(SettingsPlan plan, DriveProfile profile, DriveSize size, ParameterValues found) =>
    [
        .. from parameter in profile.Parameters
           where parameter.IsKept && parameter.Meaning?.Settings.Any(s => plan[s] is not null) is not true
           where found[parameter.Number] is { } raw && raw != profile.Default(parameter, size, found)
           select parameter.Number,
    ];
}

/// <summary>How a drive was found before anything was entered.</summary>
/// <param name="Values">What its display showed; what was not read is left out.</param>
/// <param name="At">When it was read.</param>
public sealed record SheetFound(ParameterValues Values, DateTimeOffset At);
