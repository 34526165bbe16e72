namespace Runup.Commissioning.Checks;

/// <summary>The stages of a commissioning that a blocker may hold up; what holds up one stage holds up all after it.</summary>
public enum Stage
{
    /// <summary>Settings are entered into the drive.</summary>
    Entry,

    /// <summary>The motor turns for the first time, uncoupled where it can be.</summary>
    Bump,

    /// <summary>The motor runs its machine.</summary>
    Coupled,
}
