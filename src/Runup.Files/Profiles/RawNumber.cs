using System.Globalization;
using Runup.Files.Yaml;

namespace Runup.Files.Profiles;

/// <summary>Numbers as registers hold them: counts, decimal or hexadecimal with an h behind, and display values turned into counts.</summary>
internal static class RawNumber
{
    internal static long? Parse(string text)
    {
        if (long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number))
        {
            return number;
        }

        return text is [.. var digits, 'h' or 'H'] && long.TryParse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out number) && digits.Length <= 8 ? number : null;
    }

    /// <summary>The counts of a value that is written as the display shows it.</summary>
    internal static long? OfDisplay(YamlNode node, decimal perCount, Problems problems)
    {
        if (node.AsExact(problems) is not { } value)
        {
            return null;
        }

        decimal counts;
        try
        {
            counts = value / perCount;
        }
        catch (OverflowException)
        {
            counts = decimal.MaxValue;
        }

        if (counts != decimal.Truncate(counts))
        {
            problems.Add(node, $"{Quote.Of(value.ToString(CultureInfo.InvariantCulture))} is finer than the scale", $"a multiple of {perCount.ToString(CultureInfo.InvariantCulture)} would do");
            return null;
        }

        if (counts is < int.MinValue or > uint.MaxValue)
        {
            problems.Add(node, "a value that 32 bits do not hold", "check it and the scale");
            return null;
        }

        return (long)counts;
    }
}
