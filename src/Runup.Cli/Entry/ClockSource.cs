namespace Runup.Cli.Entry;

/// <summary>What keeps the time that the record is written with, as far as it is known.</summary>
internal static class ClockSource
{
    // systemd-timesyncd makes this file once the clock follows a server (its manual, systemd-timesyncd.service(8)); other systems are not asked.
    private const string Synchronized = "/run/systemd/timesync/synchronized";

    /// <summary>In words.</summary>
    internal static string Words => OperatingSystem.IsLinux() && File.Exists(Synchronized)
        ? "the computer's clock, which its system sets after a time server"
        : "the computer's clock, not checked against a time server";
}
