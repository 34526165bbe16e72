namespace Runup.Quantities;

/// <summary>What came of reading a quantity: a value, or what is wrong with the text. Nothing else.</summary>
/// <typeparam name="T">The quantity.</typeparam>
public abstract record Reading<T>
{
    private Reading()
    {
    }

    /// <summary>The text is this quantity.</summary>
    /// <param name="Quantity">The quantity.</param>
    /// <param name="RoundingSi">Half of the last printed digit, in SI; zero where the text is exact (a fraction, a wire gauge).</param>
    /// <param name="Unit">The unit in which it was written.</param>
    /// <param name="Notation">How its number was written.</param>
    public sealed record Value(T Quantity, double RoundingSi, Unit Unit, NumberNotation Notation) : Reading<T>;

    /// <summary>The text is not this quantity.</summary>
    /// <param name="Found">What was found.</param>
    /// <param name="WouldDo">What would do.</param>
    public sealed record Problem(string Found, string WouldDo) : Reading<T>;
}
