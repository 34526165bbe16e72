using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Runup.Cli.Entry;

/// <summary>What the verbs take that enter, read and restore, over a link or by hand.</summary>
internal sealed class LinkSettings : AtDriveSettings
{
    // A misspelt one would be asked for at a moment when nobody is there to answer; that the drive is on again nobody knows beforehand.
    private static readonly string[] Nameable =
        ["safe-torque-off-open-or-motor-isolated", "no-run-command-pending", "power-cycle", "told-to-keep"];

    [CommandOption("--by-hand")]
    [Description("Without a link: a person reads and sets the drive's own display, asked about one parameter after another")]
    public bool ByHand { get; set; }

    [CommandOption("--all")]
    [Description("With --by-hand: look at every parameter that the drive keeps, not only at those that the sheet sets or that matter beside")]
    public bool All { get; set; }

    [CommandOption("--confirm <THING>")]
    [Description("A thing confirmed beforehand by its name, once for each: safe-torque-off-open-or-motor-isolated, no-run-command-pending, power-cycle; by hand told-to-keep, too. What is not confirmed so is asked for")]
    public string[] Confirmed { get; set; } = [];

    internal PersonAtTerminal AtTerminal() => new(Person, Confirmed.ToHashSet(StringComparer.Ordinal), Typing);

    internal PersonAtDisplay AtDisplay() => new(Person, AtTerminal(), Typing);

    public override ValidationResult Validate() => this switch
    {
        { ByHand: true, Link: not null } => ValidationResult.Error("--link and --by-hand are two ways to the drive; one of them would do"),
        _ when Confirmed.FirstOrDefault(c => !Nameable.Contains(c, StringComparer.Ordinal)) is { } unknown => ValidationResult.Error($"--confirm {unknown} names nothing that is asked for; one of these would do: {string.Join(", ", Nameable)}"),
        { ByHand: false, All: true } => ValidationResult.Error("--all goes with --by-hand; over a link all is read anyway"),
        _ => ValidationResult.Success(),
    };
}
