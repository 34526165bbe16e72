using System.Text;
using Runup.Cli.Terminal;
using Runup.Commissioning.Sheet;
using Runup.Files.Sheets;
using Runup.Reports.Sheets;

namespace Runup.Cli.Sheet;

/// <summary>The files that a call asks for.</summary>
internal static class SheetFiles
{
    /// <summary>Writes them and names them.</summary>
    /// <exception cref="Complaint">One of them is there already; those before it are written.</exception>
    internal static IReadOnlyList<string> Write(SheetModel sheet, SheetSettings settings)
    {
        var written = new List<string>();
        Wanted(settings.Html, s => Encoding.UTF8.GetBytes(SheetPage.Write(s)));
        Wanted(settings.Xlsx, SheetBook.Write);
        Wanted(settings.Csv, SheetCsv.Write);
        return written;

        void Wanted(string? file, Func<SheetModel, byte[]> bytes)
        {
            if (file is not null)
            {
                NewFile.Write(file, bytes(sheet));
                written.Add(file);
            }
        }
    }
}
