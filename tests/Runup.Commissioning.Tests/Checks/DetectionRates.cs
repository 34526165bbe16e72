namespace Runup.Commissioning.Tests.Checks;

/// <summary>How surely slips of the pen are found, and how often a sound plate is blamed, over some thousand invented plates.</summary>
public sealed class DetectionRates(ITestOutputHelper output)
{
    // What the plate prints beside output, voltage, current, frequency, speed; the least rate of detection for motors below 1.5 kW, below 7 kW, and above.
    [Theory]
    [InlineData(true, true, 1.0, 1.0, 1.0)]
    [InlineData(true, false, 0.9, 0.98, 1.0)]
    [InlineData(false, true, 0.9, 0.98, 1.0)]
    [InlineData(false, false, 0.6, 0.9, 0.99)]
    public void Horsepower_entered_as_kilowatts_is_found(bool powerFactor, bool efficiency, double small, double middle, double large) =>
        Measure(
            "hp as kW", GeneratedPlates.Horsepowers, hp => hp * Plates.Hp, (motor, hp) => motor.As($"{hp} kW", powerFactor, efficiency), "plate.power-unit", small, middle, large);

    [Theory]
    [InlineData(true, true, 1.0, 1.0, 1.0)]
    [InlineData(true, false, 0.75, 0.95, 1.0)]
    [InlineData(false, true, 0.8, 0.95, 1.0)]
    [InlineData(false, false, 0.4, 0.7, 0.97)]
    public void Kilowatts_entered_as_horsepower_are_found(bool powerFactor, bool efficiency, double small, double middle, double large) =>
        Measure(
            "kW as hp", GeneratedPlates.Kilowatts, kW => kW * 1000, (motor, kW) => motor.As(GeneratedPlates.HpOf(kW), powerFactor, efficiency), "plate.power-unit", small, middle, large);

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
        foreach (var (name, low, high, least) in ((string, double, double, double)[])[("below 1.5 kW", 0, 1499, small), ("1.5 to 7 kW", 1499, 7000, middle), ("above 7 kW", 7000, 1e9, large)])
        {
            var judged = ratings.Where(rating => watts(rating) > low && watts(rating) <= high)
                .SelectMany(rating => GeneratedPlates.Of(watts(rating)).Select(motor => PlateFindings.Ids(slip(motor, rating)).Contains(id)))
                .ToList();
            var rate = judged.Count(found => found) / (double)judged.Count;
            output.WriteLine($"{what}, {name}: {rate:P1} of {judged.Count} found");
            rate.ShouldBeGreaterThanOrEqualTo(least, $"{what}, {name}");
        }
    }
}
