using System.Text.RegularExpressions;

namespace Runup.Files.Listings;

/// <summary>How the cells of manuals' tables are written.</summary>
internal static partial class Patterns
{
    private const int Patience = 1000;

    /// <summary>A number with its groups and decimals: 24 000, 1'450, 0,50, −10.</summary>
    internal const string Number = @"(?:\d{1,3}(?:[\u00A0\u2009\u202F'’]\d{3})+(?!\d)(?:[.,]\d+)?|\d+(?:[.,]\d+)*)";

    private const string Gap = @"(?:\.{2,}|…|~|～|÷|→|\bto\b|\bbis\b|\buntil\b|\bthru\b|\bthrough\b|-|–|—|−|‐|‑|/)";

    /// <summary>A range: low, its unit, high, its unit.</summary>
    [GeneratedRegex(@"(?<![\w.,])(?<low>[-+−–±]?\s?" + Number + @")\s*(?<unit>(?:[A-Za-zΩµ%‰°][A-Za-z/%·.]{0,6})?)\s*(?:\(\w[^)]*\)\s*)?" + Gap + @"\s*(?<high>[-+−–]?\s?" + Number + @")\s*(?<after>.*)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.Singleline, Patience)]
    internal static partial Regex Range();

    /// <summary>The begin of a range whose end another parameter or a word gives.</summary>
    [GeneratedRegex(@"^\s*(?<low>[-+−–]?\s?" + Number + @")\s*(?:[A-Za-zΩµ%‰°/]{0,6}\s*)" + Gap + @"\s*\S", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, Patience)]
    internal static partial Regex HalfRange();

    /// <summary>A number anywhere.</summary>
    [GeneratedRegex(@"(?<![\w.,])[-+−]?" + Number, RegexOptions.CultureInvariant, Patience)]
    internal static partial Regex AnyNumber();

    /// <summary>A range of hexadecimal numbers.</summary>
    [GeneratedRegex(@"^\s*(?:0x)?(?<low>[0-9A-F]{2,8})(?<lh>h?)\s*(?:\.{2,}|…|~|to|-|–)\s*(?:0x)?(?<high>[0-9A-F]{2,8})(?<hh>h?)\s*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, Patience)]
    internal static partial Regex HexRange();

    /// <summary>Where a choice with a sign behind its value begins: 0: kW, 0 = kW, [0] kW, (0) kW, 0 - kW, 0) kW.</summary>
    [GeneratedRegex(@"(?:^|(?<=[\s;,/|•·●▪◦‣\[(–]))[\[(]?(?<value>0x[0-9A-F]+|[0-9A-F]{1,4}h|-?\d{1,6})(?:\s*[:=](?!\d*:)|[\])]\s*[:=\-–]?|\s+[-–—]\s+|\s*→|\.(?=\s+\D)|\t)\s*(?=\S)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, Patience)]
    internal static partial Regex MarkedChoice();

    /// <summary>Where a choice without a sign begins: 0 kW.</summary>
    [GeneratedRegex(@"(?:^|(?<=[\s;,/|•·●▪◦‣]))(?<value>\d{1,3})\s+(?=[A-Za-z(""])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, Patience)]
    internal static partial Regex BareChoice();

    /// <summary>A choice whose value stands behind: Off (0).</summary>
    [GeneratedRegex(@"(?<label>[^\s,;/|(][^,;|(]*?)\s*[\[(](?<value>\d{1,5})[\])]", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, Patience)]
    internal static partial Regex ChoiceBehind();

    /// <summary>Footnote marks at the end of a cell.</summary>
    [GeneratedRegex(@"(?:\s*(?:[¹²³⁴⁵⁶⁷⁸⁹⁰]+⁾?\)?|\*+\)?|†|‡|§|#(?=$))|(?<=[^\s(\d])\s?\d{1,2}\)|(?<=\S)\s+\d\)|\s*\(\s*\*+\s*\))+\s*$", RegexOptions.CultureInvariant, Patience)]
    internal static partial Regex Footnote();

    /// <summary>An object index with or without sub-index.</summary>
    [GeneratedRegex(@"^(?<x>0x)?(?<index>[0-9A-F]{4})\s?(?<h>h?)(?:\s*(?<sep>[:./\-,]|\[|\(|sub(?:[\s-]?index|\.)?:?|\s)\s*(?:0x)?(?<sub>[0-9A-F]{1,2})h?[\])]?)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, Patience)]
    internal static partial Regex Object();

    /// <summary>A parameter's number of any other habit.</summary>
    [GeneratedRegex(@"^(?:(?:no|nr|par|param|parameter|number)[.:\s]*|#\s*)?(?<number>[A-Za-z]{0,4}[-. ]?\d{1,6}(?:[-.:/]\d{1,4}){0,2}[A-Za-z]?)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, Patience)]
    internal static partial Regex ParameterNumber();

    /// <summary>A unit in brackets at the end, or anywhere in a heading.</summary>
    [GeneratedRegex(@"[\[(]\s*(?<unit>[^\])]{1,14})\s*[\])]", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, Patience)]
    internal static partial Regex Bracketed();

    /// <summary>A name of pairs of poles.</summary>
    [GeneratedRegex(@"\b(?:pole[- ]?pairs?|pairs? of poles?)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, Patience)]
    internal static partial Regex PolePairs();

    /// <summary>Lines of a page that are no rows of the table.</summary>
    [GeneratedRegex(@"^\s*(?:(?:page|sheet)\s*\d+.*|\d+\s*(?:/|of)\s*\d+|[-–]\s*\d+\s*[-–]|\(?continued.*|.*\bcontinued\)?|table\s+\d.*|notes?\b.*|(?:[¹²³⁴⁵⁶⁷⁸⁹⁰]+⁾?|\*+|†|‡)\)?\s*\S.*|\d\)\s+\S.*)\s*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, Patience)]
    internal static partial Regex Furniture();
}
