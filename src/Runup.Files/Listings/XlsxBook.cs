using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;

namespace Runup.Files.Listings;

/// <summary>The parts of a spreadsheet file that a table is read from.</summary>
/// <param name="archive">The file.</param>
internal sealed class XlsxBook(ZipArchive archive)
{
    private const long LargestPart = 64L * 1024 * 1024;
    private const int Date = -1;
    private const int MostCells = 500_000;
    private const int WidestRow = 400;
    private const int LongestCell = 4000;

    private static readonly XmlReaderSettings Strict = new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, MaxCharactersInDocument = LargestPart, IgnoreComments = true };

    /// <summary>The sheets by name, with their parts.</summary>
    internal IEnumerable<(string Name, string Path)> Sheets()
    {
        var targets = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var relation in Elements("xl/_rels/workbook.xml.rels", "Relationship"))
        {
            if (relation.GetAttribute("Id") is { } id && relation.GetAttribute("Target") is { } target)
            {
                targets[id] = target.StartsWith('/') ? target[1..] : "xl/" + target;
            }
        }

        var sheets = new List<(string, string)>();
        foreach (var sheet in Elements("xl/workbook.xml", "sheet"))
        {
            var id = Enumerable.Range(0, sheet.AttributeCount).Select(i => { sheet.MoveToAttribute(i); return (sheet.LocalName, sheet.Value); }).ToDictionary(a => a.LocalName, a => a.Value, StringComparer.Ordinal);
            if (id.TryGetValue("id", out var relation) && targets.TryGetValue(relation, out var path) && archive.GetEntry(path) is not null)
            {
                sheets.Add((id.GetValueOrDefault("name", ""), path));
            }
        }

        return sheets;
    }

    /// <summary>The words that cells share, by their places.</summary>
    internal List<string> SharedStrings()
    {
        var words = new List<string>();
        foreach (var item in Elements("xl/sharedStrings.xml", "si"))
        {
            words.Add(Text(item.ReadSubtree()));
        }

        return words;
    }

    /// <summary>For each cell format how many decimals it shows; null where it shows a number as it is.</summary>
    internal List<int?> Decimals()
    {
        var own = new Dictionary<int, string>();
        foreach (var format in Elements("xl/styles.xml", "numFmt"))
        {
            if (int.TryParse(format.GetAttribute("numFmtId"), out var id))
            {
                own[id] = format.GetAttribute("formatCode") ?? "";
            }
        }

        var decimals = new List<int?>();
        var inCells = false;
        using var reader = Open("xl/styles.xml");
        while (reader?.Read() == true)
        {
            inCells = reader.LocalName == "cellXfs" ? reader.NodeType != XmlNodeType.EndElement : inCells;
            if (inCells && reader is { NodeType: XmlNodeType.Element, LocalName: "xf" })
            {
                decimals.Add(int.TryParse(reader.GetAttribute("numFmtId"), out var id) ? Of(id, own) : null);
            }
        }

        return decimals;
    }

    /// <summary>The rows of a sheet, as the cells show them.</summary>
    internal List<ListingRow> Rows(string path, IReadOnlyList<string> words, IReadOnlyList<int?> formats)
    {
        var rows = new List<ListingRow>();
        var line = 0;
        var count = 0;
        foreach (var row in Elements(path, "row"))
        {
            line = int.TryParse(row.GetAttribute("r"), out var told) && told > line ? told : line + 1;
            var cells = new List<string>();
            using var inner = row.ReadSubtree();
            while (inner.Read())
            {
                if (inner is { NodeType: XmlNodeType.Element, LocalName: "c" } && ++count <= MostCells)
                {
                    Take(inner, cells, words, formats);
                }
            }

            if (cells.Exists(c => c.Length > 0))
            {
                rows.Add(new ListingRow(line, cells));
            }
        }

        return count > MostCells ? throw new InvalidDataException("Too many cells.") : rows;
    }

    private static void Take(XmlReader cell, List<string> cells, IReadOnlyList<string> words, IReadOnlyList<int?> formats)
    {
        var column = Column(cell.GetAttribute("r")) ?? cells.Count;
        var type = cell.GetAttribute("t") ?? "n";
        var format = int.TryParse(cell.GetAttribute("s"), out var s) && s >= 0 && s < formats.Count ? formats[s] : null;
        var value = type == "inlineStr" ? Text(cell.ReadSubtree()) : Value(cell.ReadSubtree());
        if (column >= WidestRow)
        {
            return;
        }

        while (cells.Count <= column)
        {
            cells.Add("");
        }

        var text = type switch
        {
            "s" => int.TryParse(value, out var place) && place >= 0 && place < words.Count ? words[place] : "",
            "n" when format is Date => $"(a date: {value})",
            "n" => Number(value, format),
            "b" => value is "1" ? "yes" : "no",
            "e" => "",
            _ => value,
        };
        cells[column] = (text.Length > LongestCell ? text[..LongestCell] : text).Trim();
    }

    private static string Number(string value, int? decimals)
    {
        if (!decimal.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
        {
            return value;
        }

        // Binary fractions come with the noise of their last digits.
        return decimals is { } shown
            ? number.ToString("F" + shown.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
            : decimal.Round(number, 9).ToString("0.#########", CultureInfo.InvariantCulture);
    }

    private static string Value(XmlReader cell)
    {
        using (cell)
        {
            while (cell.Read())
            {
                if (cell is { NodeType: XmlNodeType.Element, LocalName: "v" })
                {
                    return cell.ReadElementContentAsString();
                }
            }

            return "";
        }
    }

    // Runs of a rich text follow one another; what is said of its pronunciation does not belong to it.
    private static string Text(XmlReader item)
    {
        var text = new StringBuilder();
        using (item)
        {
            var reading = item.Read();
            while (reading)
            {
                if (item is { NodeType: XmlNodeType.Element, LocalName: "rPh" })
                {
                    item.Skip();
                }
                else if (item is { NodeType: XmlNodeType.Element, LocalName: "t" })
                {
                    text.Append(item.ReadElementContentAsString());
                }
                else
                {
                    reading = item.Read();
                }
            }
        }

        return text.ToString();
    }

    private static int? Of(int id, Dictionary<int, string> own) => id switch
    {
        1 or 3 or 9 => 0,
        2 or 4 or 10 => 2,
        (>= 14 and <= 22) or (>= 45 and <= 47) => Date,
        _ when own.TryGetValue(id, out var code) => OfCode(code),
        _ => null,
    };

    private static int? OfCode(string code)
    {
        var first = code.Split(';')[0];
        var point = first.IndexOf('.', StringComparison.Ordinal);
        if (!first.Contains('#', StringComparison.Ordinal) && !first.Contains('0', StringComparison.Ordinal) && first.Any(c => c is 'd' or 'm' or 'y' or 'D' or 'M' or 'Y'))
        {
            return Date;
        }

        return !first.Contains('0', StringComparison.Ordinal) ? null : point < 0 ? 0 : first[(point + 1)..].TakeWhile(c => c is '0' or '?').Count();
    }

    private static int? Column(string? reference)
    {
        var column = 0;
        foreach (var c in reference ?? "")
        {
            if (!char.IsAsciiLetterUpper(c))
            {
                break;
            }

            column = Math.Min((column * 26) + (c - 'A' + 1), 100_000);
        }

        return column > 0 ? column - 1 : null;
    }

    private IEnumerable<XmlReader> Elements(string part, string name)
    {
        using var reader = Open(part);
        while (reader?.Read() == true)
        {
            if (reader.NodeType == XmlNodeType.Element && reader.LocalName == name)
            {
                yield return reader;
                reader.MoveToElement();
            }
        }
    }

    private XmlReader? Open(string part)
    {
        var entry = archive.GetEntry(part);
        return entry is null ? null : entry.Length > LargestPart ? throw new InvalidDataException("Too large.") : XmlReader.Create(entry.Open(), Strict);
    }
}
