namespace Runup.Engineering.Standards;

/// <summary>How sure a figure of a table is.</summary>
public enum Certainty
{
    /// <summary>Read in the source named.</summary>
    Seen,

    /// <summary>Recalled, not read: to be checked against the standard before it decides anything.</summary>
    Memory,

    /// <summary>Calculated from a stated formula.</summary>
    Computed,
}
