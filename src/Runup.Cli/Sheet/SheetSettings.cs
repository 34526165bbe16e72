using System.ComponentModel;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Sheet;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Runup.Cli.Sheet;

/// <summary>What <c>runup sheet</c> takes.</summary>
internal sealed class SheetSettings : JobSettings
{
    [CommandOption("--must")]
    [Description("Only what the set cannot do without; one page")]
    public bool Must { get; set; }

    [CommandOption("--all")]
    [Description("Every parameter, also those that the job leaves alone")]
    public bool All { get; set; }

    [CommandOption("--html <FILE.html>")]
    [Description("For paper: open it in a browser and print it")]
    public string? Html { get; set; }

    [CommandOption("--xlsx <FILE.xlsx>")]
    [Description("For a spreadsheet")]
    public string? Xlsx { get; set; }

    [CommandOption("--csv <FILE.csv>")]
    [Description("For another program")]
    public string? Csv { get; set; }

    internal SheetExtent Extent => Must ? SheetExtent.Must : All ? SheetExtent.Everything : SheetExtent.Decided;

    public override ValidationResult Validate()
    {
        if (Must && All)
        {
            return ValidationResult.Error("--must and --all exclude one another; one of them would do");
        }

        return new[] { FileOption.Named("--html", Html, ".html"), FileOption.Named("--xlsx", Xlsx, ".xlsx"), FileOption.Named("--csv", Csv, ".csv") }
            .FirstOrDefault(r => !r.Successful) ?? ValidationResult.Success();
    }
}
