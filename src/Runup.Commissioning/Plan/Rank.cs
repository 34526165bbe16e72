namespace Runup.Commissioning.Plan;

/// <summary>How much it matters that a setting is entered.</summary>
public enum Rank
{
    /// <summary>Without it the set does not run rightly, or someone may be hurt.</summary>
    Must,

    /// <summary>Better so, by this job's data.</summary>
    Should,

    /// <summary>The drive would do without.</summary>
    May,
}
