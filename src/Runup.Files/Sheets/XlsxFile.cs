using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;

namespace Runup.Files.Sheets;

/// <summary>A spreadsheet file after ECMA-376, with what a plain table needs and nothing else: no formulas, no macros, no links.</summary>
internal static class XlsxFile
{
    private const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Package = "http://schemas.openxmlformats.org/package/2006";
    private const string Kind = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    // A package carries times; with one of our own the same table gives the same bytes.
    private static readonly DateTimeOffset Always = new(2000, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The bytes of a file of these tabs.</summary>
    internal static byte[] Of(IReadOnlyList<XlsxTab> tabs)
    {
        var styles = new XlsxStyles(tabs.SelectMany(t => t.Rows).SelectMany(r => r));
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Part(zip, "[Content_Types].xml", ContentTypes(tabs.Count));
            Part(zip, "_rels/.rels", Relations(("rId1", "officeDocument", "xl/workbook.xml")));
            Part(zip, "xl/workbook.xml", Workbook(tabs));
            Part(zip, "xl/_rels/workbook.xml.rels", Relations([.. tabs.Select((_, i) => (Id(i), "worksheet", $"worksheets/sheet{i + 1}.xml")), (Id(tabs.Count), "styles", "styles.xml")]));
            Part(zip, "xl/styles.xml", styles.Write());
            for (var i = 0; i < tabs.Count; i++)
            {
                using var part = Open(zip, string.Create(CultureInfo.InvariantCulture, $"xl/worksheets/sheet{i + 1}.xml"));
                using var xml = XmlWriter.Create(part, new XmlWriterSettings { Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false) });
                tabs[i].Write(xml, styles);
            }
        }

        return bytes.ToArray();
    }

    private static string Id(int place) => string.Create(CultureInfo.InvariantCulture, $"rId{place + 1}");

    private static string ContentTypes(int tabs) =>
        $"<Types xmlns=\"{Package}/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/>"
        + $"<Override PartName=\"/xl/workbook.xml\" ContentType=\"{Kind}sheet.main+xml\"/><Override PartName=\"/xl/styles.xml\" ContentType=\"{Kind}styles+xml\"/>"
        + string.Concat(Enumerable.Range(1, tabs).Select(n => string.Create(CultureInfo.InvariantCulture, $"<Override PartName=\"/xl/worksheets/sheet{n}.xml\" ContentType=\"{Kind}worksheet+xml\"/>")))
        + "</Types>";

    private static string Relations(params IEnumerable<(string Id, string Kind, string Target)> relations) =>
        $"<Relationships xmlns=\"{Package}/relationships\">{string.Concat(relations.Select(r => $"<Relationship Id=\"{r.Id}\" Type=\"{Office}/{r.Kind}\" Target=\"{r.Target}\"/>"))}</Relationships>";

    private static string Workbook(IReadOnlyList<XlsxTab> tabs)
    {
        var sheets = string.Concat(tabs.Select((t, i) => string.Create(CultureInfo.InvariantCulture, $"<sheet name=\"{t.Name}\" sheetId=\"{i + 1}\" r:id=\"{Id(i)}\"/>")));
        var titles = string.Concat(tabs.Select((t, i) => string.Create(CultureInfo.InvariantCulture, $"<definedName name=\"_xlnm.Print_Area\" localSheetId=\"{i}\">{t.PrintArea}</definedName><definedName name=\"_xlnm.Print_Titles\" localSheetId=\"{i}\">{t.Name}!$1:$1</definedName>")));
        return $"<workbook xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" xmlns:r=\"{Office}\"><sheets>{sheets}</sheets><definedNames>{titles}</definedNames></workbook>";
    }

    private static void Part(ZipArchive zip, string name, string text)
    {
        using var part = Open(zip, name);
        part.Write(Encoding.UTF8.GetBytes(text));
    }

    private static Stream Open(ZipArchive zip, string name)
    {
        var entry = zip.CreateEntry(name);
        entry.LastWriteTime = Always;
        return entry.Open();
    }
}
