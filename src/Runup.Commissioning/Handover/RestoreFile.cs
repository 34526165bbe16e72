using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Runup.Commissioning.Survey;
using Runup.Profiles;

namespace Runup.Commissioning.Handover;

/// <summary>What a drive held when it was handed over, so that it, or one of the same size put in its place, can be made so again.</summary>
public sealed record RestoreFile
{
    /// <summary>Equipment tag.</summary>
    public required string Tag { get; init; }

    /// <summary>Name of the drive's profile.</summary>
    public required string Profile { get; init; }

    /// <summary>Name of its size: values of another size are not to be entered.</summary>
    public required string Size { get; init; }

    /// <summary>What the drive said it was.</summary>
    public required string Identity { get; init; }

    /// <summary>When its parameters were last read in full.</summary>
    public required DateTimeOffset ReadAt { get; init; }

    /// <summary>Where the record's chain stood.</summary>
    public required string ChainHead { get; init; }

    /// <summary>The parameters in the make's own order.</summary>
    public required IReadOnlyList<RestoreLine> Parameters { get; init; }

    /// <summary>SHA-256 over profile, size and each parameter's number and counts, one a line, in hex.</summary>
    public string Checksum => ChecksumOf(Profile, Size, Parameters);

    /// <summary>The file of a story; null where the drive was never read.</summary>
    public static RestoreFile? Of(Job job, DriveProfile profile, DriveSize size, RecordStory story)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(profile);
        if (story is not { LastRead: { } read, Head: { } head } || story.AsLeft.Count == 0)
        {
            return null;
        }

        var left = ParameterValues.From(story.AsLeft);
        return new()
        {
            Tag = job.Tag,
            Profile = profile.Family,
            Size = size.Name,
            Identity = read.Body.Identity,
            ReadAt = read.Time,
            ChainHead = head.Hash,
            Parameters = [.. profile.Parameters.Where(p => p.IsKept && left[p.Number] is not null).Select(p => new RestoreLine(
                p.Number, p.Name, DisplayText.Of(p, left[p.Number]!.Value, left), DisplayText.Unit(p, left), left[p.Number]!.Value))],
        };
    }

    internal static string ChecksumOf(string profile, string size, IEnumerable<RestoreLine> lines)
    {
        var text = string.Join('\n', lines.Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.Parameter}={l.Raw}")).Prepend(size).Prepend(profile));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
    }
}

/// <summary>A parameter's value.</summary>
/// <param name="Parameter">The make's number.</param>
/// <param name="Name">The name on the make's list.</param>
/// <param name="Display">What the display shows, without unit.</param>
/// <param name="Unit">Its unit, or null.</param>
/// <param name="Raw">In counts: what is written back.</param>
public sealed record RestoreLine(string Parameter, string Name, string Display, string? Unit, long Raw);
