using System.ComponentModel;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Entry;
using Runup.DriveLink;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Runup.Cli.Entry;

/// <summary>What every verb over a link takes.</summary>
internal sealed class LinkSettings : JobSettings
{
    [CommandOption("--link <LINK>")]
    [Description("tcp://HOST:PORT/UNIT")]
    public string? Link { get; set; }

    [CommandOption("--by-hand")]
    [Description("Without a link: a person reads and sets the drive's own display, asked about one parameter after another")]
    public bool ByHand { get; set; }

    [CommandOption("--all")]
    [Description("With --by-hand: look at every parameter that the drive keeps, not only at those that the sheet sets or that matter beside")]
    public bool All { get; set; }

    [CommandOption("--by <NAME>")]
    [Description("Who stands at the drive and confirms; else the user of this computer")]
    public string? By { get; set; }

    [CommandOption("--confirm <THING>")]
    [Description("A thing confirmed beforehand by its name, once for each: safe-torque-off-open-or-motor-isolated, no-run-command-pending, power-cycle; by hand told-to-keep, too. What is not confirmed so is asked for")]
    public string[] Confirmed { get; set; } = [];

    internal LinkAddress Address => Link is null
        ? throw new Complaint(ExitStatus.BadInput, "runup: --link is missing; tcp://HOST:PORT/UNIT would do, such as tcp://192.168.1.40:502/1, or --by-hand where the drive has no usable link")
        : LinkText.Read(Link) switch
        {
            LinkText.Address address => address.Of,
            LinkText.NotYet not => throw new Complaint(ExitStatus.BadInput, $"runup: --link {Link}: {not.Why}"),
            LinkText.Wrong wrong => throw new Complaint(ExitStatus.BadInput, $"runup: --link {Link}: {wrong.Why}"),
            _ => throw new InvalidOperationException("The set of link texts is closed."),
        };

    internal string Person => string.IsNullOrWhiteSpace(By) ? Environment.UserName : By.Trim();

    private Typing Typing { get; } = new(Console.In, Console.Error);

    internal PersonAtTerminal AtTerminal() => new(Person, Confirmed.ToHashSet(StringComparer.Ordinal), Typing);

    internal PersonAtDisplay AtDisplay() => new(Person, AtTerminal(), Typing);

    internal IDriveLinks LinksFor(LoadedJob job) => new ModbusDriveLinks(Address, job.Profile, TimeProvider.System);

    public override ValidationResult Validate() => this switch
    {
        { ByHand: true, Link: not null } => ValidationResult.Error("--link and --by-hand are two ways to the drive; one of them would do"),
        { ByHand: false, All: true } => ValidationResult.Error("--all goes with --by-hand; over a link all is read anyway"),
        _ => ValidationResult.Success(),
    };
}
