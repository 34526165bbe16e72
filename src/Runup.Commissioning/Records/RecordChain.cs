using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Runup.Commissioning.Records;

/// <summary>How entries of the record are chained, so that a later change of any of them shows.</summary>
/// <remarks>
/// The hash of an entry is SHA-256 (FIPS 180-4), in lower-case hex, over the UTF-8 bytes of five lines joined by a line feed:
/// the previous entry's hash (<see cref="Origin"/> for the first), sequence, time, tag, and the body's JSON as stored.
/// None of the five can hold a line feed, so the lines can't be shifted. A chain can't show that its newest entries are missing:
/// for that, a head printed on paper is held against it.
/// </remarks>
public static class RecordChain
{
    /// <summary>What stands for the hash before the first entry: 64 zeros.</summary>
    public static string Origin { get; } = new('0', 64);

    /// <summary>The hash of an entry.</summary>
    /// <param name="previous">Hash of the entry before, or <see cref="Origin"/>.</param>
    /// <param name="sequence">Place in the chain, from 1.</param>
    /// <param name="at">The time as <see cref="TimeText"/> writes it.</param>
    /// <param name="tag">The set.</param>
    /// <param name="body">The body's JSON.</param>
    public static string Hash(string previous, long sequence, string at, string tag, string body) =>
        Hash(previous, sequence, Encoding.UTF8.GetBytes(at), Encoding.UTF8.GetBytes(tag), Encoding.UTF8.GetBytes(body));

    /// <summary>The hash of an entry from the bytes that are stored, so that not even broken text goes unseen.</summary>
    /// <param name="previous">Hash of the entry before, or <see cref="Origin"/>.</param>
    /// <param name="sequence">Place in the chain, from 1.</param>
    /// <param name="at">The time in UTF-8.</param>
    /// <param name="tag">The set in UTF-8.</param>
    /// <param name="body">The body's JSON in UTF-8.</param>
    public static string Hash(string previous, long sequence, ReadOnlySpan<byte> at, ReadOnlySpan<byte> tag, ReadOnlySpan<byte> body)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{previous}\n{sequence}\n")));
        hash.AppendData(at);
        hash.AppendData("\n"u8);
        hash.AppendData(tag);
        hash.AppendData("\n"u8);
        hash.AppendData(body);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>A time with its offset, to 100 ns, after ISO 8601.</summary>
    public static string TimeText(DateTimeOffset at) => at.ToString("O", CultureInfo.InvariantCulture);

    /// <summary>A time read back from <see cref="TimeText"/>, its offset kept.</summary>
    /// <exception cref="FormatException">The text is no such time.</exception>
    public static DateTimeOffset ReadTime(string text) => DateTimeOffset.ParseExact(text, "O", CultureInfo.InvariantCulture);

    /// <summary>Returns the tag if the record can hold it.</summary>
    /// <exception cref="ArgumentException">The tag is empty, or holds control characters or half of a surrogate pair.</exception>
    public static string RequireTag(string tag)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(tag);
        return tag.EnumerateRunes().Any(r => r == Rune.ReplacementChar || Rune.IsControl(r))
            ? throw new ArgumentException("A tag holds no control characters and no broken text.", nameof(tag))
            : tag;
    }
}
