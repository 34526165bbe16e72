using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>Which slip of the pen is called the likeliest, over some thousand invented plates.</summary>
public sealed class LikelySlipTests(ITestOutputHelper output)
{
    private static readonly Dictionary<string, (Func<GeneratedPlates.Generated, double, PlateSurvey> Slip, Func<GeneratedPlates.Generated, double, string> Meant)> Slips = new()
    {
        ["hp as kW"] = ((m, _) => m.As(FormattableString.Invariant($"{m.Output_W / Plates.Hp:0.##} kW"), true, true), (m, _) => FormattableString.Invariant($"the output is {Said.Number(Math.Round(m.Output_W / Plates.Hp, 2))} hp")),
        ["kW as hp"] = ((m, kW) => m.As(GeneratedPlates.HpOf(kW), true, true), (_, kW) => $"the output is {Said.Number(kW)} kW"),
        ["phase current"] = ((m, kW) => (m with { Amperes = GeneratedPlates.Significant(m.Amperes / Math.Sqrt(3), 3) }).As($"{kW} kW", true, true), (_, _) => "line and phase"),
        ["star for delta voltage"] = ((m, kW) => (m with { Volts = m.Hertz == 50 ? 690 : 796 }).As($"{kW} kW", true, true), (_, _) => "line and phase"),
        ["voltage of the 2:1 column"] = ((m, kW) => (m with { Volts = m.Volts / 2 }).As($"{kW} kW", true, true), (_, _) => "the other of two columns"),
        ["other frequency"] = ((m, kW) => (m with { Hertz = 110 - m.Hertz }).As($"{kW} kW", true, true), (m, _) => $"the frequency is {m.Hertz} Hz"),
        ["poles"] = ((m, kW) => (m with { Poles = m.Poles == 4 ? 6 : 4 }).As($"{kW} kW", true, true), (m, _) => $"the motor has {m.Poles} poles"),
        ["η and cos φ interchanged"] = ((m, kW) => (m with { PowerFactor = m.EfficiencyPercent / 100, EfficiencyPercent = m.PowerFactor * 100 }).As($"{kW} kW", true, true), (_, _) => "are interchanged"),
        ["digits of the current interchanged"] = ((m, kW) => (m with { Amperes = Interchanged(m.Amperes) }).As($"{kW} kW", true, true), (m, _) => $"the current is {Said.Number(m.Amperes, 4)} A"),
        ["digits of the power factor interchanged"] = ((m, kW) => (m with { PowerFactor = Interchanged(m.PowerFactor) }).As($"{kW} kW", true, true), (m, _) => $"the power factor is {Said.Number(m.PowerFactor)}"),
        ["digits of the speed interchanged"] = ((m, kW) => (m with { Rpm = Interchanged(m.Rpm) }).As($"{kW} kW", true, true), (m, _) => $"the speed is {Said.Number(m.Rpm, 4)} rpm"),
        ["a digit of the voltage (0 as 8)"] = ((m, kW) => (m with { Volts = m.Volts + (m.Hertz == 50 ? 80 : 8) }).As($"{kW} kW", true, true), (m, _) => $"the voltage is {m.Volts} V"),
    };

    // Every third rating: enough for whole per cents, and three times as quick.
    private static readonly double[] Ratings = [.. GeneratedPlates.Kilowatts.Where((_, place) => place % 3 == 0)];

    public static TheoryData<string> Names => [.. Slips.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_slip_that_was_made_is_named_as_often_as_the_page_says(string name)
    {
        var (slip, meant) = Slips[name];
        var (blamed, first, amongThree) = (0, 0, 0);
        foreach (var kW in Ratings)
        {
            foreach (var motor in GeneratedPlates.Of(kW * 1000))
            {
                var plate = slip(motor, kW);
                if (PlateFindings.Ids(plate).Count == 0)
                {
                    continue;
                }

                var ranked = PlateContext.For(Plates.Motor(plate)).Likely.Ranked.Take(3).Select(one => one.Candidate.What).ToList();
                var place = ranked.FindIndex(what => what.Contains(meant(motor, kW), StringComparison.Ordinal));
                blamed++;
                first += place == 0 ? 1 : 0;
                amongThree += place >= 0 ? 1 : 0;
            }
        }

        var all = Ratings.Sum(kW => GeneratedPlates.Of(kW * 1000).Count());
        var row = FormattableString.Invariant($"| {name} | {100.0 * blamed / all:0} % | {100.0 * first / blamed:0} % | {100.0 * amongThree / blamed:0} % |");
        output.WriteLine(row);
        DocumentedPages.Page("slips-of-the-pen").ShouldContain(row);
    }

    [Fact]
    public void A_sentence_names_the_best_with_how_well_it_fits()
    {
        var plate = Plates.Of("15 kW", 400, 21.2, 50, 1455, 4, 0.83, 90.6);
        var finding = PlateFindings.Of(plate, "plate.power-unit").ShouldBeOfType<CheckResult.Violated>();
        output.WriteLine(finding.Explanation);
        finding.Explanation.ShouldContain("most likely the output is 15 hp or PS (11.2 kW or 11 kW)");
        PlateFindings.Of(Plates.Of("15 PS", 400, 29.2, 50, 1465, 4, 0.84, 91.5), "plate.power-unit").ShouldBeOfType<CheckResult.Violated>()
            .Explanation.ShouldContain("most likely the output is 15 kW");
        PlateFindings.Ids(Plates.Of("15 PS", 400, 21.2, 50, 1455, 4, 0.83, 90.6)).ShouldBeEmpty();
    }

    /// <summary>The last two digits that differ, interchanged.</summary>
    private static double Interchanged(double value)
    {
        var digits = value.ToString(System.Globalization.CultureInfo.InvariantCulture).ToCharArray();
        for (var place = digits.Length - 1; place > 0; place--)
        {
            var before = digits[place - 1] == '.' ? place - 2 : place - 1;
            if (before >= 0 && digits[place] != '.' && digits[place] != digits[before])
            {
                (digits[place], digits[before]) = (digits[before], digits[place]);
                break;
            }
        }

        return double.Parse(digits, System.Globalization.CultureInfo.InvariantCulture);
    }
}
