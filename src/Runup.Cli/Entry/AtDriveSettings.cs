using System.ComponentModel;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Entry;
using Runup.DriveLink;
using Spectre.Console.Cli;

namespace Runup.Cli.Entry;

/// <summary>What every verb takes with which a person stands at a drive.</summary>
internal abstract class AtDriveSettings : JobSettings
{
    [CommandOption("--link <LINK>")]
    [Description("tcp://HOST:PORT/UNIT")]
    public string? Link { get; set; }

    [CommandOption("--by <NAME>")]
    [Description("Who stands at the drive and confirms; else the user of this computer")]
    public string? By { get; set; }

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

    protected Typing Typing { get; } = new(Console.In, Console.Error);

    internal IDriveLinks LinksFor(LoadedJob job) => new ModbusDriveLinks(Address, job.Profile, TimeProvider.System);
}
