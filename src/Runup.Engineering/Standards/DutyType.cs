using System.Globalization;
using System.Text.RegularExpressions;
using Runup.Quantities;

namespace Runup.Engineering.Standards;

/// <summary>The duty that a plate's output is for, as marked on it.</summary>
/// <remarks>
/// IEC 60034-1 (from memory): S1 continuous; S2 for a time from cold, then rest until cold again; S3 to S5 on and off, S6 to S8 loaded and idling, in cycles of ten
/// minutes unless another is marked, with a cyclic duration factor; S9 loads and speeds that vary without a period; S10 a few constant loads.
/// NEMA plates say CONT or a time.
/// </remarks>
[Source("iec-60034-1", "duty types S1 to S10")]
public abstract partial record DutyType
{
    private DutyType()
    {
    }

    /// <summary>S1, S9 or S10: the output may be given without end.</summary>
    public sealed record Continuous : DutyType;

    /// <summary>S2: for a time from cold.</summary>
    /// <param name="Time">How long; null where it is not marked.</param>
    public sealed record ShortTime(Duration? Time) : DutyType;

    /// <summary>S3 to S8: a part of every cycle.</summary>
    /// <param name="Number">3 to 8.</param>
    /// <param name="Part">Cyclic duration factor; null where it is not marked.</param>
    public sealed record Periodic(int Number, Fraction? Part) : DutyType
    {
        /// <summary>Whether the motor idles between loads, rather than rests.</summary>
        public bool Idles => Number >= 6;
    }

    /// <summary>A mark that says none of them.</summary>
    public sealed record Unreadable : DutyType;

    /// <summary>Reads a mark, as "S1", "S3 40 %", "S2-30 min", "CONT", "60 MIN".</summary>
    public static DutyType Of(string mark)
    {
        ArgumentNullException.ThrowIfNull(mark);
        var text = mark.Trim().ToUpperInvariant();
        var minutes = Minutes().Match(text) is { Success: true } time ? Duration.FromSeconds(60 * Read(time.Groups["value"].Value)) : (Duration?)null;
        if (Type().Match(text) is { Success: true } type)
        {
            var number = int.Parse(type.Groups["value"].Value, CultureInfo.InvariantCulture);
            Fraction? part = Percent().Match(text) is { Success: true } percent && Read(percent.Groups["value"].Value) is > 0 and <= 100 and var value ? Fraction.FromRatio(value / 100) : null;
            return number switch
            {
                1 or 9 or 10 => new Continuous(),
                2 => new ShortTime(minutes),
                _ => new Periodic(number, part),
            };
        }

        return text is "CONT" or "CONT." or "CONTINUOUS" ? new Continuous()
            : minutes is not null ? new ShortTime(minutes)
            : new Unreadable();
    }

    private static double Read(string text) => double.Parse(text.Replace(',', '.'), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^S\s?(?<value>10|[1-9])(?![0-9])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Type();

    [GeneratedRegex(@"(?<value>[0-9]{1,3}([.,][0-9])?)\s?%", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Percent();

    [GeneratedRegex(@"(?<value>[0-9]{1,4})\s?MIN", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Minutes();
}
