using Runup.Commissioning.Checks;
using Runup.Profiles;

namespace Runup.Commissioning.Entry;

/// <summary>What is to be entered, into what.</summary>
public sealed record EntryTask
{
    /// <summary>The set's tag, under which all is recorded.</summary>
    public required string Tag { get; init; }

    /// <summary>The drive's profile.</summary>
    public required DriveProfile Profile { get; init; }

    /// <summary>Its size.</summary>
    public required DriveSize Size { get; init; }

    /// <summary>The lines to enter.</summary>
    public required EntrySheet Sheet { get; init; }

    /// <summary>What the checks permit; nothing is blocked unless it says so.</summary>
    public Verdict Verdict { get; init; } = new([], [], []);

    /// <summary>Parameters that a person asked by name to have written while the motor runs; heeded only where the profile permits it.</summary>
    public IReadOnlySet<string> WhileRunning { get; init; } = new HashSet<string>(StringComparer.Ordinal);

    internal IReadOnlyList<Parameter> Kept => [.. Profile.Parameters.Where(p => p.IsKept)];

    internal bool SafeWhileRunning(IEnumerable<EntryLine> lines) =>
        WhileRunning.Count > 0 && lines.All(l => l.Parameter.Access == ParameterAccess.AnyTime && WhileRunning.Contains(l.Number));
}
