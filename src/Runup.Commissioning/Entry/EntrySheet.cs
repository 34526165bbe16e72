using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Runup.Profiles;

namespace Runup.Commissioning.Entry;

/// <summary>One parameter to be entered.</summary>
/// <param name="Parameter">The parameter.</param>
/// <param name="Raw">The value, in counts.</param>
public sealed record EntryLine(Parameter Parameter, long Raw)
{
    /// <summary>Its number on the make's list.</summary>
    public string Number => Parameter.Number;

    /// <summary>Whether it can make the motor start by itself: such lines go last, each named.</summary>
    public bool CanStartMotor => EntryOrder.CanStartMotor(Parameter);
}

/// <summary>What is to be entered, in order.</summary>
public sealed record EntrySheet
{
    private EntrySheet(IReadOnlyList<EntryLine> lines, IReadOnlyList<LeftToPerson> left)
    {
        Lines = lines;
        Left = left;
        var text = string.Join('\n', lines.Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.Number}={l.Raw}")));
        Sha256 = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
    }

    /// <summary>The lines in the order of entry.</summary>
    public IReadOnlyList<EntryLine> Lines { get; }

    /// <summary>What a person has to decide before it can be entered.</summary>
    public IReadOnlyList<LeftToPerson> Left { get; }

    /// <summary>Checksum over numbers and values in order, in hex.</summary>
    public string Sha256 { get; }

    /// <summary>The lines of a sheet that have a parameter and a value, in its order.</summary>
    public static EntrySheet From(IReadOnlyList<SheetLine> sheet) => new(
        [.. sheet.OrderBy(l => l.Order).Where(l => l is { Parameter: not null, Raw: not null, Mapping: not null }).Select(l => new EntryLine(l.Parameter!, l.Raw!.Value))],
        [.. sheet.Where(l => l.Mapping is Mapping.NeedsChoice).Select(l => new LeftToPerson(l.Parameter!.Number, l.Note ?? "a person has to choose its value"))]);

    /// <summary>Everything that a drive held, to be put back, in the profile's order of entry.</summary>
    public static EntrySheet Restoring(DriveProfile profile, ParameterValues held) => new(
        [.. EntryOrder.Of(profile).Where(p => p.IsKept && held[p.Number] is not null).Select(p => new EntryLine(p, held[p.Number]!.Value))],
        [.. profile.Parameters.Where(p => p.IsKept && held[p.Number] is null).Select(p => new LeftToPerson(p.Number, "its value was not known when the drive was found"))]);

    /// <summary>Some lines of a sheet, in the order given.</summary>
    public static EntrySheet Of(IEnumerable<EntryLine> lines) => new([.. lines], []);
}

/// <summary>A parameter that is not entered until a person decides.</summary>
/// <param name="Parameter">Its number.</param>
/// <param name="Why">What there is to decide.</param>
public sealed record LeftToPerson(string Parameter, string Why);
