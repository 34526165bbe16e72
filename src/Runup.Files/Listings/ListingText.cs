using System.Text;

namespace Runup.Files.Listings;

/// <summary>The text of a table that another program wrote: UTF-8, UTF-16 with its mark, or the one-byte writing of older spreadsheets.</summary>
internal static class ListingText
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    // Where Windows-1252 differs from ISO 8859-1: 80h to 9Fh. From memory.
    private const string Windows = "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008DŽ\u008F\u0090‘’“”•–—˜™š›œ\u009DžŸ";

    internal static string Of(ReadOnlySpan<byte> bytes, Problems cautions)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            return (bytes[0] == 0xFF ? Encoding.Unicode : Encoding.BigEndianUnicode).GetString(bytes[2..]);
        }

        try
        {
            return Strict.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            cautions.AddForFile("characters that are not UTF-8", "they are read as Windows-1252; look whether signs such as °, Ω and … came through");
            return string.Create(bytes.Length, bytes, static (text, from) =>
            {
                for (var i = 0; i < text.Length; i++)
                {
                    text[i] = from[i] is >= 0x80 and <= 0x9F ? Windows[from[i] - 0x80] : (char)from[i];
                }
            });
        }
    }
}
