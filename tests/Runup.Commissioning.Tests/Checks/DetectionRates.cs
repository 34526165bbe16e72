namespace Runup.Commissioning.Tests.Checks;

/// <summary>How surely slips of the pen are found, and how often a sound plate is blamed, over some thousand invented plates.</summary>
public sealed class DetectionRates(ITestOutputHelper output)
{
    public static TheoryData<string, bool, bool> Printed => new MatrixOfPrinted();

    [Theory]
    [MemberData(nameof(Printed))]
    public void Units_mixed_up_are_found_as_often_as_the_page_says(string slip, bool powerFactor, bool efficiency)
    {
        var hpAsKw = slip == "hp as kW";
        var rates = hpAsKw
            ? Rates(slip, GeneratedPlates.Horsepowers, hp => hp * Plates.Hp, (motor, hp) => motor.As(FormattableString.Invariant($"{hp} kW"), powerFactor, efficiency), "plate.power-unit")
            : Rates(slip, GeneratedPlates.Kilowatts, kW => kW * 1000, (motor, kW) => motor.As(GeneratedPlates.HpOf(kW), powerFactor, efficiency), "plate.power-unit");
        var printed = (powerFactor, efficiency) switch { (true, true) => "cos φ, η", (true, false) => "cos φ", (false, true) => "η", _ => "neither" };
        DocumentedPages.Page("slips-of-the-pen").ShouldContain(FormattableString.Invariant($"| {slip} | {printed} | {rates[0]:0} % | {rates[1]:0} % | {rates[2]:0} % |"));
    }

    // Without a printed number of poles, eight poles at 50 Hz with much slip may as well be ten at 60 Hz.
    [Theory]
    [InlineData(true, 0.99, 0.98)]
    [InlineData(false, 0.85, 0.9)]
    public void The_other_columns_frequency_is_found(bool poles, double small, double middle) =>
        Measure(
            "other frequency",
            GeneratedPlates.Kilowatts,
            kW => kW * 1000,
            (motor, kW) => (motor with { Hertz = motor.Hertz == 50 ? 60 : 50 }).As($"{kW} kW", true, true, poles),
            "plate.base-frequency",
            small,
            middle,
            0.97);

    [Fact]
    public void A_wrong_number_of_poles_is_found() =>
        Measure("poles", GeneratedPlates.Kilowatts, kW => kW * 1000, (motor, kW) => (motor with { Poles = motor.Poles == 4 ? 6 : 4 }).As($"{kW} kW", true, true), "plate.poles", 1, 1, 1);

    [Fact]
    public void A_synchronous_speed_is_found() =>
        Measure("synchronous", GeneratedPlates.Kilowatts, kW => kW * 1000, (motor, kW) => (motor with { Rpm = 120 * motor.Hertz / motor.Poles }).As($"{kW} kW", true, true), "plate.speed", 1, 1, 1);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_phase_current_is_found(bool printed) =>
        Measure(
            "phase current",
            GeneratedPlates.Kilowatts,
            kW => kW * 1000,
            (motor, kW) => (motor with { Amperes = motor.Amperes / Math.Sqrt(3) }).As($"{kW} kW", printed, printed),
            "plate.line-phase-current",
            printed ? 1 : 0.6,
            printed ? 1 : 0.8,
            printed ? 1 : 0.9);

    [Theory]
    [InlineData(true, true)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(false, false)]
    public void A_sound_plate_is_never_blamed(bool powerFactor, bool efficiency)
    {
        var blamed = new List<string>();
        foreach (var kW in GeneratedPlates.Kilowatts)
        {
            Blame($"{kW} kW", kW * 1000);
        }

        foreach (var hp in GeneratedPlates.Horsepowers)
        {
            Blame(GeneratedPlates.HpOf(hp), hp * Plates.Hp);
            Blame(FormattableString.Invariant($"{hp * Plates.Hp / 1000:0.##} kW"), hp * Plates.Hp);
        }

        blamed.ShouldBeEmpty();

        void Blame(string written, double watts)
        {
            foreach (var motor in GeneratedPlates.Of(watts))
            {
                blamed.AddRange(PlateFindings.Ids(motor.As(written, powerFactor, efficiency)).Select(id => $"{written} {motor}: {id}"));
            }
        }
    }

    private void Measure(
        string what, IReadOnlyList<double> ratings, Func<double, double> watts, Func<GeneratedPlates.Generated, double, Commissioning.Survey.PlateSurvey> slip, string id, double small, double middle, double large)
    {
        var rates = Rates(what, ratings, watts, slip, id);
        (rates[0] / 100, rates[1] / 100, rates[2] / 100).ShouldSatisfyAllConditions(
            r => r.Item1.ShouldBeGreaterThanOrEqualTo(small),
            r => r.Item2.ShouldBeGreaterThanOrEqualTo(middle),
            r => r.Item3.ShouldBeGreaterThanOrEqualTo(large));
    }

    /// <summary>Per cent found, below 1.5 kW, to 7 kW, above.</summary>
    private double[] Rates(
        string what, IReadOnlyList<double> ratings, Func<double, double> watts, Func<GeneratedPlates.Generated, double, Commissioning.Survey.PlateSurvey> slip, string id)
    {
        var rates = new List<double>();
        foreach (var (low, high) in ((double, double)[])[(0, 1499), (1499, 7000), (7000, 1e9)])
        {
            var judged = ratings.Where(rating => watts(rating) > low && watts(rating) <= high)
                .SelectMany(rating => GeneratedPlates.Of(watts(rating)).Select(motor => PlateFindings.Ids(slip(motor, rating)).Contains(id)))
                .ToList();
            rates.Add(100 * judged.Count(found => found) / (double)judged.Count);
            output.WriteLine($"{what}, {low} W to {high} W: {rates[^1]:0.0} % of {judged.Count} found");
        }

        return [.. rates];
    }

    private sealed class MatrixOfPrinted : TheoryData<string, bool, bool>
    {
        public MatrixOfPrinted()
        {
            foreach (var slip in (string[])["hp as kW", "kW as hp"])
            {
                foreach (var printed in (int[])[3, 2, 1, 0])
                {
                    Add(slip, (printed & 2) != 0, (printed & 1) != 0);
                }
            }
        }
    }
}
