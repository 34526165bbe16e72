using System.Globalization;
using System.Text;
using QRCoder;

namespace Runup.Reports.Label;

/// <summary>A QR code (ISO/IEC 18004) as the path of an SVG, one unit a module.</summary>
/// <param name="Side">Modules on each side, without the quiet zone.</param>
/// <param name="Path">The dark modules, for the attribute <c>d</c>.</param>
internal sealed record QrCode(int Side, string Path)
{
    // The quiet zone that the library adds; the label draws its own.
    private const int Rim = 4;

    /// <summary>The code of a text, with error correction M: a scratch over a seventh of it is borne.</summary>
    public static QrCode Of(string text)
    {
        using var data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M, forceUtf8: true, eciMode: QRCodeGenerator.EciMode.Utf8);
        var (rows, path) = (data.ModuleMatrix, new StringBuilder());
        var side = rows.Count - (2 * Rim);
        for (var y = 0; y < side; y++)
        {
            for (var x = 0; x < side; x++)
            {
                var from = x;
                while (x < side && rows[y + Rim][x + Rim])
                {
                    x++;
                }

                if (x > from)
                {
                    path.Append(CultureInfo.InvariantCulture, $"M{from} {y}h{x - from}v1h-{x - from}z");
                }
            }
        }

        return new(side, path.ToString());
    }
}
