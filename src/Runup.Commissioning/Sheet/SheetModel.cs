using Runup.Commissioning.Entry;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Survey;
using Runup.Profiles;

namespace Runup.Commissioning.Sheet;

/// <summary>What a sheet says, whoever writes it: terminal, page or table.</summary>
public sealed record SheetModel
{
    /// <summary>What to do with a sheet, in order.</summary>
    public static IReadOnlyList<string> HowTo { get; } =
    [
        "Enter from top to bottom with the motor stopped: what others depend on comes first, what can start the motor last.",
        "Then store, switch off and on, and look again.",
        "Where it says same, the drive shows it from the factory: look, and correct it if it does not.",
        "Numbers have a decimal point; none has a sign for thousands.",
    ];

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

    /// <summary>The lines that have a parameter, in the order of entry.</summary>
    public required IReadOnlyList<SheetEntry> Entries { get; init; }

    /// <summary>The settings for which the drive has no parameter.</summary>
    public required IReadOnlyList<SheetEntry> Without { get; init; }

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

    /// <summary>The sheet of a job for a drive as it comes from the factory.</summary>
    public static SheetModel Of(Job job, SettingsPlan plan, DriveProfile profile, DriveSize size, SheetExtent extent, DateTimeOffset writtenAt)
    {
        var factory = ParameterValues.Defaults(profile, size);
        var lines = JobSheet.For(plan, profile, size, factory, extent).Select(row => SheetEntry.Of(row, profile)).ToList();
        return new()
        {
            Tag = job.Tag,
            Title = job.Title,
            Drive = $"{profile.Title}, size {size.Name}",
            WrittenAt = writtenAt,
            Extent = extent,
            Checksum = EntrySheet.From(Profiles.Sheet.For(profile, size, plan.Values, factory)).Sha256[..12],
            Entries = [.. lines.Where(l => l.IsOffered)],
            Without = [.. lines.Where(l => !l.IsOffered)],
        };
    }
}
