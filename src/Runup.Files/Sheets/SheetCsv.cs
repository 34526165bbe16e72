using System.Globalization;
using CsvHelper;
using Runup.Commissioning.Sheet;

namespace Runup.Files.Sheets;

/// <summary>The sheet as CSV after RFC 4180: a header, CRLF at line ends, UTF-8.</summary>
public static class SheetCsv
{
    /// <summary>The file's bytes.</summary>
    public static byte[] Write(SheetModel sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        using var bytes = new MemoryStream();
        using (var csv = CsvWriter.Create(bytes, Options, leaveOpen: true))
        {
            csv.WriteHeader([.. SheetColumns.All.Select(c => c.Name)]);
            foreach (var entry in sheet.Lines)
            {
                foreach (var column in SheetColumns.All)
                {
                    Cell(csv, column.Cell(entry));
                }

                csv.EndRecord();
            }
        }

        return bytes.ToArray();
    }

    // A spreadsheet takes words that begin with =, +, - or @ for a formula; an apostrophe makes them words again. A number keeps its sign.
    private static CsvWriterOptions Options => new()
    {
        Quoting = CsvQuoting.WhenNeededOrWhitespace,
        Injection = CsvInjection.Escape,
        FormatProvider = CultureInfo.InvariantCulture,
    };

    private static void Cell(CsvWriter csv, SheetCell cell)
    {
        switch (cell)
        {
            case SheetCell.Number number:
                csv.WriteField(number.Value, format: default);
                break;
            default:
                csv.WriteField(cell.Text);
                break;
        }
    }
}
