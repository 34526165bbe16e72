namespace Runup.Commissioning.Sheet;

/// <summary>How much of a drive's list a sheet shows.</summary>
public enum SheetExtent
{
    /// <summary>What the job decides.</summary>
    Decided,

    /// <summary>Of that only what the set cannot do without.</summary>
    Must,

    /// <summary>Every parameter that can be written, also those that the job leaves alone.</summary>
    Everything,
}
