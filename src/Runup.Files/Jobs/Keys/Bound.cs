namespace Runup.Files.Jobs.Keys;

/// <summary>What a quantity can be at all; whether it makes sense is for the checks to say.</summary>
internal enum Bound
{
    /// <summary>Whatever its type allows.</summary>
    Any,

    /// <summary>More than nothing.</summary>
    AboveZero,

    /// <summary>Nothing or more.</summary>
    FromZero,

    /// <summary>Nothing or more, and no more than the whole.</summary>
    UpToWhole,

    /// <summary>More than nothing and no more than the whole.</summary>
    PartOfWhole,
}
