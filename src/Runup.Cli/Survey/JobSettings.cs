using System.ComponentModel;
using Spectre.Console.Cli;

namespace Runup.Cli.Survey;

/// <summary>What every verb on one job takes.</summary>
internal class JobSettings : CommandSettings
{
    [CommandArgument(0, "<JOB>")]
    [Description("The job file")]
    public string Job { get; set; } = "";

    [CommandOption("--json")]
    [Description("One JSON document on standard output")]
    public bool Json { get; set; }
}
