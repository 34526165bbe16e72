using System.Globalization;
using System.Text;
using Runup.Commissioning.Handover;
using Runup.Reports.Html;

namespace Runup.Reports.Label;

/// <summary>The label for the panel's door, 90 mm by 50 mm: which set, when it was handed over, and by which checksums its papers and its drive are known again.</summary>
public static class DoorLabel
{
    private const double Width = 90;
    private const double Height = 50;
    private const double Margin = 3;
    private const double CodeSide = 40;
    private const double TextWidth = Width - CodeSide - (3 * Margin);

    // A letter's mean width over its size, generous: Arial's capitals and digits.
    private const double LetterWidth = 0.68;

    /// <summary>What the code says: lines that a telephone shows as they are.</summary>
    public static string Text(HandoverModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        string[] lines =
        [
            $"Tag {model.Tag}",
            string.Create(CultureInfo.InvariantCulture, $"Handed over {model.WrittenAt:yyyy-MM-dd'T'HH:mm:sszzz}"),
            string.Create(CultureInfo.InvariantCulture, $"Open restrictions {model.Open.Count}"),
            $"Restore file {model.Restore?.Checksum ?? "none"}",
            $"Record {model.Story.Head?.Hash ?? "none"}",
        ];
        return string.Join('\n', lines);
    }

    /// <summary>The label as an SVG of real size that needs nothing else.</summary>
    public static string Write(HandoverModel model)
    {
        var code = QrCode.Of(Text(model));
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"""<svg xmlns="http://www.w3.org/2000/svg" class="label" width="{Width}mm" height="{Height}mm" viewBox="0 0 {Width} {Height}" role="img" font-family="'Liberation Sans', Arial, sans-serif" fill="#111">""")
            .Append(CultureInfo.InvariantCulture, $"<title>Door label {Escape.Text(model.Tag)}</title>")
            .Append(CultureInfo.InvariantCulture, $"""<rect x=".2" y=".2" width="{Width - 0.4}" height="{Height - 0.4}" fill="#fff" stroke="#111" stroke-width=".3"/>""");
        Words(svg, model);
        var module = CodeSide / (code.Side + 8);
        svg.Append(CultureInfo.InvariantCulture, $"""<path transform="translate({Width - Margin - CodeSide + (4 * module):0.###} {((Height - CodeSide) / 2) + (4 * module):0.###}) scale({module:0.#####})" d="{code.Path}" shape-rendering="crispEdges"/>""");
        return svg.Append("</svg>").ToString();
    }

    private static void Words(StringBuilder svg, HandoverModel model)
    {
        var y = Tag(svg, model.Tag);
        Line(ref y, 3.2, model.Title ?? string.Empty, 4.4);
        y += 1;
        Line(ref y, 3.2, string.Create(CultureInfo.InvariantCulture, $"handed over {model.WrittenAt:yyyy-MM-dd}"), 4.4);
        Line(ref y, 2.6, model.Open.Count == 0 ? "nothing open is known" : string.Create(CultureInfo.InvariantCulture, $"OPEN RESTRICTIONS: {model.Open.Count}"), 4, bold: model.Open.Count > 0);
        y = Height - 12.2;
        Line(ref y, 2.4, "restore file, record:", 3.2);
        Line(ref y, 2.8, Short(model.Restore?.Checksum), 3.6, code: true);
        Line(ref y, 2.8, Short(model.Story.Head?.Hash), 0, code: true);

        void Line(ref double at, double size, string text, double feed, bool bold = false, bool code = false)
        {
            svg.Append(CultureInfo.InvariantCulture, $"""<text x="{Margin}" y="{at:0.##}" font-size="{size}"{(bold ? " font-weight=\"700\"" : "")}{(code ? " font-family=\"'Liberation Mono', monospace\"" : "")}>{Escape.Text(Fit(text, size))}</text>""");
            at += feed;
        }
    }

    // As large as the width bears, on one line; returns where the next line stands.
    private static double Tag(StringBuilder svg, string tag)
    {
        var size = Math.Clamp(TextWidth / (LetterWidth * Math.Max(1, tag.Length)), 3, 9);
        svg.Append(CultureInfo.InvariantCulture, $"""<text x="{Margin}" y="{Margin + size:0.##}" font-size="{size:0.##}" font-weight="700">{Escape.Text(Fit(tag, size))}</text>""");
        return Margin + size + 5;
    }

    private static string Fit(string text, double size)
    {
        var most = (int)(TextWidth / (size * 0.55));
        var letters = new StringInfo(text);
        return letters.LengthInTextElements <= most ? text : letters.SubstringByTextElements(0, most - 1) + "…";
    }

    // Enough to tell two apart by eye; the code holds all of it.
    private static string Short(string? hash) => hash is { Length: >= 16 } ? $"{hash[..4]} {hash[4..8]} {hash[8..12]} {hash[12..16]}" : "none";
}
