using System.Text;
using System.Text.RegularExpressions;
using Runup.Commissioning.Sheet;

namespace Runup.Files.Sheets;

/// <summary>The sheet as CSV after RFC 4180: a header, CRLF at line ends, UTF-8.</summary>
public static partial class SheetCsv
{
    /// <summary>The file's bytes.</summary>
    public static byte[] Write(SheetModel sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var text = new StringBuilder();
        Line(text, SheetColumns.All.Select(c => c.Name));
        foreach (var entry in sheet.Lines)
        {
            Line(text, SheetColumns.All.Select(c => c.Cell(entry).Text));
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void Line(StringBuilder text, IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(c => Quoted(Harmless(c)))).Append("\r\n");

    // A spreadsheet takes a cell that begins so for a formula; an apostrophe makes it words again. A number keeps its sign.
    private static string Harmless(string cell) =>
        cell.Length > 0 && cell[0] is '=' or '+' or '-' or '@' or '\t' or '\r' && !PlainNumber().IsMatch(cell) ? $"'{cell}" : cell;

    private static string Quoted(string cell) =>
        cell.AsSpan().IndexOfAny(",\"\r\n") >= 0 || cell.Length != cell.Trim().Length ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;

    [GeneratedRegex(@"^-?[0-9]+(\.[0-9]+)?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex PlainNumber();
}
