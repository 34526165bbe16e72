namespace Runup.Profiles;

/// <summary>Which half of a 32-bit value stands in the lower register.</summary>
public enum WordOrder
{
    /// <summary>Low word first.</summary>
    LowFirst,

    /// <summary>High word first.</summary>
    HighFirst,
}
