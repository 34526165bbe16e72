using System.ComponentModel;
using Runup.Cli.Entry;
using Runup.Cli.Terminal;
using Runup.Commissioning.FirstRun;
using Spectre.Console.Cli;

namespace Runup.Cli.FirstRun;

/// <summary>What <c>first-run</c> takes.</summary>
internal sealed class FirstRunSettings : AtDriveSettings
{
    [CommandOption("--again <STEP>")]
    [Description("A step to be done again although it is done, by its id; once for each")]
    public string[] Again { get; set; } = [];

    internal PersonAtPanel AtPanel(Action quit) => new(Person, Typing, quit);

    /// <summary>The steps to be done again.</summary>
    /// <exception cref="Complaint">One is no step of the plan.</exception>
    internal IReadOnlyList<string> AgainOf(FirstRunPlan plan) => Again.FirstOrDefault(a => plan.Steps.All(s => s.Id != a)) is { } unknown
        ? throw new Complaint(ExitStatus.BadInput, $"runup: --again {unknown}: there is no such step; one of these would do: {string.Join(", ", plan.Steps.Select(s => s.Id))}")
        : Again;
}
