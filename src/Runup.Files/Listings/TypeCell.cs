using System.Text.RegularExpressions;

namespace Runup.Files.Listings;

/// <summary>Bits and sign of a register, as tables print them: U16, INT32, unsigned 32, 2 words, DWORD.</summary>
internal static partial class TypeCell
{
    internal static (int Width, bool? Signed)? Read(string text)
    {
        var plain = NumberCell.Clean(text).ToLowerInvariant().Replace("_", "", StringComparison.Ordinal);
        if (plain is "word" or "w" or "1 word")
        {
            return (16, null);
        }

        if (plain is "dword" or "dw" or "double word" or "2 words" or "long" or "double" or "2w")
        {
            return (32, plain is "long" ? true : null);
        }

        if (plain is "2" or "1")
        {
            return (plain is "2" ? 32 : 16, null);
        }

        if (Form().Match(plain) is not { Success: true } match || !int.TryParse(match.Groups["bits"].Value, out var bits) || bits is not (8 or 16 or 24 or 32))
        {
            return plain is "boolean" or "bool" or "enum" ? (16, false) : null;
        }

        bool? signed = match.Groups["sign"].Value switch { "" => null, ['u', ..] => false, _ => true };
        return (bits > 16 ? 32 : 16, signed);
    }

    [GeneratedRegex(@"^(?<sign>u|uint|unsigned|unsigned int|i|int|s|sint|signed|signed int|integer)?\s*-?(?<bits>8|16|24|32)\s*(?:bits?)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Form();
}
