using System.Globalization;

namespace Runup.Cli.Terminal;

/// <summary>What stood after an option that takes a number. Whether it is one, and one that would do, the verb says in its own words.</summary>
internal sealed record NumberOption
{
    /// <summary>As typed; the parser of the command line makes it from a text.</summary>
    public NumberOption(string text) => Text = text;

    internal string Text { get; }

    /// <summary>The number; null where there is none within the limits.</summary>
    internal double? Within(double low, double high) =>
        double.TryParse(Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number >= low && number <= high ? number : null;

    /// <summary>The whole number, written in digits alone; null where there is none up to the limit.</summary>
    internal ulong? Whole(ulong high) => ulong.TryParse(Text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= high ? number : null;

    /// <summary>One sentence about what was found and what would do.</summary>
    internal Spectre.Console.ValidationResult Wrong(string option, string wouldDo) => Spectre.Console.ValidationResult.Error($"{option} '{Text}' would not do; {wouldDo} would");
}
