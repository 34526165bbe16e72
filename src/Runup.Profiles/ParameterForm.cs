namespace Runup.Profiles;

/// <summary>What values a parameter takes.</summary>
public abstract record ParameterForm
{
    private ParameterForm()
    {
    }

    /// <summary>Whether the parameter takes this value, whatever the size of the drive.</summary>
    public abstract bool Accepts(long raw);

    /// <summary>A number.</summary>
    /// <param name="Scale">What one count is worth.</param>
    /// <param name="Unit">Its unit.</param>
    /// <param name="Low">Lowest value, in counts.</param>
    /// <param name="High">Highest value, in counts.</param>
    /// <param name="Step">Counts from one permitted value to the next.</param>
    /// <param name="Specials">Values that mean something else than their number, such as 0 for off.</param>
    public sealed record Numeric(DisplayScale Scale, ParameterUnit Unit, long Low, long High, long Step, IReadOnlyList<NamedValue> Specials) : ParameterForm
    {
        /// <summary>How the display writes its digits.</summary>
        public Digits Digits { get; init; }

        /// <inheritdoc/>
        public override bool Accepts(long raw) => Accepts(raw, new ParameterRange(Low, High));

        /// <summary>Whether a value lies in a range, on a step, or is special.</summary>
        public bool Accepts(long raw, ParameterRange range) =>
            (raw >= range.Low && raw <= range.High && (raw - range.Low) % Step == 0) || Specials.Any(s => s.Raw == raw);
    }

    /// <summary>One of some named values.</summary>
    /// <param name="Values">The values, in the make's order.</param>
    public sealed record Choices(IReadOnlyList<NamedValue> Values) : ParameterForm
    {
        /// <inheritdoc/>
        public override bool Accepts(long raw) => Values.Any(v => v.Raw == raw);
    }
}

/// <summary>How a display writes the digits of a number.</summary>
public enum Digits
{
    /// <summary>Decimal.</summary>
    Decimal,

    /// <summary>Binary, shown here with a b behind, since 101 is a decimal number as well.</summary>
    Binary,

    /// <summary>Hexadecimal, shown here with an h behind.</summary>
    Hexadecimal,
}

/// <summary>A value with the text that the display shows for it.</summary>
/// <param name="Raw">The value in the register.</param>
/// <param name="Label">What the display shows; empty where it shows the digits.</param>
public sealed record NamedValue(long Raw, string Label);

/// <summary>Lowest and highest value, in counts.</summary>
/// <param name="Low">Lowest.</param>
/// <param name="High">Highest.</param>
public sealed record ParameterRange(long Low, long High);
