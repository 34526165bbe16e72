namespace Runup.Quantities;

/// <summary>How a number was written, as far as it bears on how its neighbours are to be read.</summary>
public enum NumberNotation
{
    /// <summary>Nothing in it depends on a habit.</summary>
    Plain,

    /// <summary>With a comma that can only be a decimal sign, as in <c>7,5</c>.</summary>
    DecimalComma,

    /// <summary>
    /// With a point and just three digits after it, as in <c>1.500</c>: read as one and a half, but among decimal commas its writer
    /// may have meant fifteen hundred.
    /// </summary>
    PointBeforeThreeDigits,
}
