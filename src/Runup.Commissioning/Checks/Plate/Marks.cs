using System.Text.RegularExpressions;
using Runup.Commissioning.Survey;
using Runup.Engineering;
using Runup.Engineering.Standards;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>The plate's marks in letters: duty, cooling, insulation, efficiency class, design letter; what is none of them says nothing to the calculations.</summary>
[Source("iec-60034-1", "duty types, thermal classes")]
[Source("iec-60034-6", "IC code")]
[Source("iec-60034-12", "design letters")]
internal sealed partial class Marks() : PlateCheck("plate.marks")
{
    private static readonly string[] Enclosures = ["TEFC", "TENV", "TEBC", "TEAO", "ODP", "DP", "WPI", "WPII"];
    private static readonly string[] DesignLetters = ["A", "B", "C", "D", "E", "N", "NE", "NY", "NEY", "H", "HE", "HY", "HEY"];
    private static readonly string[] ThermalClasses = ["Y", "A", "E", "B", "F", "H", "N", "R", "90", "105", "120", "130", "155", "180", "200", "220"];

    /// <inheritdoc/>
    public override CheckResult Judge(PlateContext context)
    {
        var plate = context.Plate;
        List<string> odd = [];
        Add(odd, plate.Duty, mark => DutyType.Of(mark) is not DutyType.Unreadable, mark => $"`{mark}` is no duty: S1 to S10, CONT or a time would be");
        Add(odd, plate.Cooling, IsCooling, mark => $"`{mark}` is no way of cooling: IC411, IC416 or the like, or TEFC, TENV, TEBC, ODP would be");
        Add(odd, plate.InsulationClass, IsThermalClass, mark => $"`{mark}` is no thermal class: B, F, H or 130, 155, 180 would be");
        Add(odd, plate.EfficiencyClass, mark => EfficiencyClass.NameOf(mark) is not null, mark => $"`{mark}` is no efficiency class: IE1 to IE5 or PREMIUM would be");
        Add(odd, plate.DesignLetter, mark => DesignLetters.Contains(mark.Trim().ToUpperInvariant()), mark => $"`{mark}` is no design letter: A to D of NEMA, N or H of IEC would be");
        return odd.Count == 0
            ? Fine("every mark entered is one that can be read")
            : new CheckResult.Violated(Id, Severity.Note, Blocks, new Basis.Standard("IEC 60034-1, -6, -12 and -30-1, NEMA MG 1", Recalled: true))
            {
                Title = odd.Count == 1 ? "A mark of the plate that can't be read" : "Marks of the plate that can't be read",
                Explanation = $"{string.Join("; ", odd)}. It is kept for the record, and nothing is reckoned from it.",
                Remedy = "Look at the plate again; leave out what it does not have.",
            };
    }

    private static void Add(List<string> odd, Datum<string>? mark, Func<string, bool> isOne, Func<string, string> otherwise)
    {
        if (mark?.Value is { } text && !isOne(text))
        {
            odd.Add(otherwise(text.Trim()));
        }
    }

    private static bool IsCooling(string mark)
    {
        var text = mark.Trim().ToUpperInvariant();
        return Enclosures.Contains(text) || InternationalCooling().IsMatch(text);
    }

    private static bool IsThermalClass(string mark) =>
        mark.ToUpperInvariant().Split([' ', '/', '(', ')', ',', '-', '.'], StringSplitOptions.RemoveEmptyEntries).Any(word => ThermalClasses.Contains(word));

    /// <summary>Two digits of an open machine, three of a closed one, W for water, letters between in the full code; four digits with a leading zero in old plates.</summary>
    [GeneratedRegex("^IC ?(0[0-9]{3}|[0-9][0-9]W?|[4-9][0-9][0-9]|[0-9][A-Z]?[0-9][A-Z]?[0-9][A-Z]?)$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex InternationalCooling();
}
