using System.Globalization;
using System.Text;
using Runup.Commissioning.Sheet;

namespace Runup.Files.Sheets;

/// <summary>How cells look: a heading, words that wrap, and numbers with as many decimals as their display shows.</summary>
internal sealed class XlsxStyles
{
    /// <summary>Number of the style of headings.</summary>
    internal const int Heading = 1;

    private const int Words = 2;
    private const int FirstNumber = 3;

    // Formats below this number belong to the format itself.
    private const int FirstFormat = 164;
    private readonly int most;

    /// <summary>The styles that some cells need.</summary>
    internal XlsxStyles(IEnumerable<SheetCell> cells) => most = cells.OfType<SheetCell.Number>().Select(n => (int)n.Value.Scale).DefaultIfEmpty(0).Max();

    /// <summary>Number of a cell's style.</summary>
    internal int Of(SheetCell cell) => cell is SheetCell.Number number ? FirstNumber + number.Value.Scale : Words;

    /// <summary>The styles' part of the file.</summary>
    internal string Write()
    {
        var decimals = Enumerable.Range(0, most + 1).ToList();
        var formats = string.Concat(decimals.Select(d => Text($"<numFmt numFmtId=\"{FirstFormat + d}\" formatCode=\"{(d == 0 ? "0" : "0." + new string('0', d))}\"/>")));
        var numbers = string.Concat(decimals.Select(d => Text($"<xf numFmtId=\"{FirstFormat + d}\" fontId=\"0\" fillId=\"0\" borderId=\"1\" xfId=\"0\" applyNumberFormat=\"1\" applyBorder=\"1\" applyAlignment=\"1\"><alignment horizontal=\"right\" vertical=\"top\"/></xf>")));
        return new StringBuilder("<?xml version=\"1.0\" encoding=\"utf-8\"?>\n<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">")
            .Append(Text($"<numFmts count=\"{decimals.Count}\">{formats}</numFmts>"))
            .Append("<fonts count=\"2\"><font><sz val=\"11\"/><name val=\"Arial\"/></font><font><b/><sz val=\"11\"/><name val=\"Arial\"/></font></fonts>")
            .Append("<fills count=\"2\"><fill><patternFill patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill></fills>")
            .Append("<borders count=\"2\"><border/><border><left/><right/><top/><bottom style=\"thin\"/></border></borders>")
            .Append("<cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/></cellStyleXfs>")
            .Append(Text($"<cellXfs count=\"{FirstNumber + decimals.Count}\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>"))
            .Append("<xf numFmtId=\"0\" fontId=\"1\" fillId=\"0\" borderId=\"1\" xfId=\"0\" applyFont=\"1\" applyBorder=\"1\"/>")
            .Append("<xf numFmtId=\"49\" fontId=\"0\" fillId=\"0\" borderId=\"1\" xfId=\"0\" applyNumberFormat=\"1\" applyBorder=\"1\" applyAlignment=\"1\"><alignment horizontal=\"left\" vertical=\"top\" wrapText=\"1\" indent=\"1\"/></xf>")
            .Append(numbers)
            .Append("</cellXfs></styleSheet>")
            .ToString();
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
