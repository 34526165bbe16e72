using System.Globalization;

namespace Runup.Commissioning.Sheet;

/// <summary>What stands in a cell of the sheet, for tables that tell numbers from words.</summary>
public abstract record SheetCell
{
    private SheetCell()
    {
    }

    /// <summary>Nothing stands in it.</summary>
    public static SheetCell Blank { get; } = new Words("");

    /// <summary>The cell as it is read.</summary>
    public abstract string Text { get; }

    /// <summary>A cell of what a display shows: a number where it is one and nothing else.</summary>
    public static SheetCell OfDisplay(string? display) =>
        decimal.TryParse(display, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
            ? new Number(value)
            : new Words(display ?? "");

    /// <summary>Words.</summary>
    /// <param name="Value">The words.</param>
    public sealed record Words(string Value) : SheetCell
    {
        /// <inheritdoc/>
        public override string Text => Value;
    }

    /// <summary>A number with as many decimals as the display shows, zeros at the end too.</summary>
    /// <param name="Value">The number; its decimals are those of the display.</param>
    public sealed record Number(decimal Value) : SheetCell
    {
        /// <inheritdoc/>
        public override string Text => Value.ToString(CultureInfo.InvariantCulture);
    }
}
