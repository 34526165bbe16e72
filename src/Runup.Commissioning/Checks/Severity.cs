namespace Runup.Commissioning.Checks;

/// <summary>How much a finding weighs.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>May go on, by someone who has read it.</summary>
    Caution,

    /// <summary>Holds up the stage that the check names.</summary>
    Blocker,
}
