using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Runup.Files.Listings;

/// <summary>How the formats of a spreadsheet's cells show a number.</summary>
internal sealed class XlsxFormats
{
    private const int MostDecimals = 20;

    private readonly List<CellFormat> formats;

    internal XlsxFormats(WorkbookStylesPart? styles)
    {
        var own = new Dictionary<uint, string>();
        foreach (var format in XlsxPart.Each<NumberingFormat>(styles))
        {
            if (format.NumberFormatId is { HasValue: true } id)
            {
                own[id.Value] = format.FormatCode?.Value ?? "";
            }
        }

        formats = [.. XlsxPart.Each<CellFormats>(styles).Take(1).SelectMany(f => f.Elements<DocumentFormat.OpenXml.Spreadsheet.CellFormat>()).Select(f => f.NumberFormatId is { HasValue: true } id ? Of(id.Value, own) : CellFormat.AsItIs)];
    }

    /// <summary>The format of a style's place.</summary>
    internal CellFormat Of(uint style) => style < formats.Count ? formats[(int)style] : CellFormat.AsItIs;

    // The numbers below 164 are the format's own.
    private static CellFormat Of(uint id, Dictionary<uint, string> own) => id switch
    {
        _ when own.TryGetValue(id, out var code) => OfCode(code),
        1 or 3 or 9 => new CellFormat.Decimals(0),
        2 or 4 or 10 => new CellFormat.Decimals(2),
        (>= 14 and <= 22) or (>= 45 and <= 47) => new CellFormat.Date(),
        _ => CellFormat.AsItIs,
    };

    private static CellFormat OfCode(string code)
    {
        var first = code.Split(';')[0];
        var point = first.IndexOf('.', StringComparison.Ordinal);
        if (!first.Contains('#', StringComparison.Ordinal) && !first.Contains('0', StringComparison.Ordinal) && first.Any(c => c is 'd' or 'm' or 'y' or 'D' or 'M' or 'Y'))
        {
            return new CellFormat.Date();
        }

        return !first.Contains('0', StringComparison.Ordinal) ? CellFormat.AsItIs
            : new CellFormat.Decimals(point < 0 ? 0 : Math.Min(MostDecimals, first[(point + 1)..].TakeWhile(c => c is '0' or '?').Count()));
    }
}

/// <summary>How a cell shows a number.</summary>
internal abstract record CellFormat
{
    private CellFormat()
    {
    }

    /// <summary>With the digits that it has.</summary>
    internal static CellFormat AsItIs { get; } = new General();

    /// <summary>With so many decimals.</summary>
    internal sealed record Decimals(int Count) : CellFormat;

    /// <summary>As a date or a time, which no value of a parameter is.</summary>
    internal sealed record Date : CellFormat;

    private sealed record General : CellFormat;
}
