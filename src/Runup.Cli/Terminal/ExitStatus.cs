namespace Runup.Cli.Terminal;

/// <summary>How the program ends; the only place where outcomes become exit statuses.</summary>
internal enum ExitStatus
{
    /// <summary>Nothing stands in the way.</summary>
    Fine = 0,

    /// <summary>The work ran and found a blocker, or something failed to be entered.</summary>
    Blocked = 1,

    /// <summary>Bad input or usage.</summary>
    BadInput = 2,

    /// <summary>The link failed.</summary>
    LinkFailed = 3,

    /// <summary>Refused because somebody could be hurt.</summary>
    RefusedForSafety = 4,
}

/// <summary>Of several statuses, the one to end with.</summary>
internal static class ExitStatuses
{
    private static readonly ExitStatus[] WorstFirst =
        [ExitStatus.BadInput, ExitStatus.RefusedForSafety, ExitStatus.LinkFailed, ExitStatus.Blocked, ExitStatus.Fine];

    internal static ExitStatus Worst(this IEnumerable<ExitStatus> statuses)
    {
        var all = statuses.ToHashSet();
        return WorstFirst.FirstOrDefault(all.Contains, ExitStatus.Fine);
    }
}
