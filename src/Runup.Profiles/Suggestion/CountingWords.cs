using System.Globalization;
using System.Text.RegularExpressions;

namespace Runup.Profiles;

/// <summary>What a row's name, remark and printed unit say of the way in which it counts.</summary>
internal static partial class CountingWords
{
    private const int Patience = 1000;

    /// <summary>To which frequency a ramp is counted.</summary>
    internal static RampEnd RampCountsTo(ListedParameter row)
    {
        var text = Text(row);
        return Base().IsMatch(text) ? RampEnd.Base
            : Maximum().IsMatch(text) ? RampEnd.Maximum
            : Rated().IsMatch(text) ? RampEnd.Rated
            : Figure().IsMatch(text) && HighestFigure(text) > 0 ? RampEnd.Fixed
            : RampEnd.Unsaid;
    }

    /// <summary>The frequency in figures that a ramp is counted to.</summary>
    internal static string FixedEnd(ListedParameter row) => HighestFigure(Text(row)).ToString(CultureInfo.InvariantCulture) + " Hz";

    private static decimal HighestFigure(string text) =>
        AnyFrequency().Matches(text).Select(m => decimal.Parse(m.Groups["figure"].Value.Replace(',', '.'), CultureInfo.InvariantCulture)).DefaultIfEmpty(0).Max();

    /// <summary>Of what a part is counted.</summary>
    internal static Whole PartOf(ListedParameter row)
    {
        var text = Text(row);
        return OfDrive().IsMatch(text) ? Whole.Drive
            : OfMotor().IsMatch(text) ? Whole.Motor
            : OfBase().IsMatch(text) ? Whole.Base
            : OfMaximum().IsMatch(text) ? Whole.Maximum
            : Whole.Unsaid;
    }

    /// <summary>Whether a row holds the drive's own rated current.</summary>
    internal static bool IsDriveCurrent(ListedParameter row) => row.Unit is "A" && DriveCurrent().IsMatch(row.Name);

    /// <summary>Whether a unit is one of a rate, such as Hz/s.</summary>
    internal static bool IsRate(string unit) => Rate().IsMatch(unit);

    private static string Text(ListedParameter row) => $"{row.Name} {row.UnitText} {row.Remark}";

    [GeneratedRegex(@"\b(?:base|corner|knee|type point|field weakening|full voltage|full volts|break point)\b(?!\s*block)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, Patience)]
    private static partial Regex Base();

    [GeneratedRegex(@"\b(?:to|from|over|at)\s+(?:the\s+)?(?:max|top|highest|upper limit|high limit|full speed|full range|f_?max)|\b(?:max\.?|maximum|top|highest)\s+(?:output\s+|field\s+)?(?:frequency|speed|hz|reference)\b|\bf_?max\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, Patience)]
    private static partial Regex Maximum();

    [GeneratedRegex(@"\b(?:rated|nominal|nameplate|plate)\s+(?:motor\s+)?(?:frequency|speed|hz)\b|\bmotor(?:'s)?\s+(?:rated|nominal)\s+(?:frequency|speed)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, Patience)]
    private static partial Regex Rated();

    [GeneratedRegex(@"\b(?:to|and|/|-|–|~|…|\.{2,})\s*\d{2,3}(?:[.,]\d+)?\s*Hz\b|\b\d{2,3}(?:[.,]\d+)?\s*Hz\s*(?:to|->|–|-)\s*0", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, Patience)]
    private static partial Regex Figure();

    [GeneratedRegex(@"(?<figure>\d{2,3}(?:[.,]\d+)?)\s*Hz\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, Patience)]
    private static partial Regex AnyFrequency();

    [GeneratedRegex(@"\b(?:of|%)\s*(?:the\s+)?(?:drive|inverter|converter|device|unit|vfd)(?:'s)?\b|\b(?:drive|inverter|converter|device)\s+(?:rated|nominal|rating)\b|\bHD rating\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, Patience)]
    private static partial Regex OfDrive();

    [GeneratedRegex(@"(?:%|‰|\bof)\s*(?:the\s+)?(?:motor|mot\b|rated|nominal|nameplate|plate|FLC\b|FLA\b|In\b|I_?n\b|Imot|In\.?\s*mot|Un\b|U_?n\b|fn\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, Patience)]
    private static partial Regex OfMotor();

    [GeneratedRegex(@"(?:%|‰|\bof)\s*(?:the\s+)?(?:base|corner|knee)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, Patience)]
    private static partial Regex OfBase();

    [GeneratedRegex(@"(?:%|‰|\bof)\s*(?:the\s+)?(?:max|maximum|top|full speed|f_?max)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, Patience)]
    private static partial Regex OfMaximum();

    [GeneratedRegex(@"\b(?:drive|inverter|converter|device|unit)\b.*\b(?:rated|nominal|rating)\b|\b(?:rated|nominal)\b.*\b(?:drive|inverter|converter|device)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, Patience)]
    private static partial Regex DriveCurrent();

    [GeneratedRegex(@"^(?:Hz|rpm|%|V|A)/(?:s|min)$", RegexOptions.CultureInvariant, Patience)]
    private static partial Regex Rate();
}

/// <summary>The upper end that a ramp is counted to.</summary>
internal enum RampEnd
{
    /// <summary>The table does not say.</summary>
    Unsaid,

    /// <summary>The base frequency.</summary>
    Base,

    /// <summary>The motor's rated frequency.</summary>
    Rated,

    /// <summary>The maximum frequency, as our settings count.</summary>
    Maximum,

    /// <summary>A frequency in figures.</summary>
    Fixed,
}

/// <summary>What a part is counted of.</summary>
internal enum Whole
{
    /// <summary>The table does not say.</summary>
    Unsaid,

    /// <summary>The motor's rated value.</summary>
    Motor,

    /// <summary>The drive's own rating.</summary>
    Drive,

    /// <summary>The base frequency.</summary>
    Base,

    /// <summary>The maximum frequency.</summary>
    Maximum,
}
