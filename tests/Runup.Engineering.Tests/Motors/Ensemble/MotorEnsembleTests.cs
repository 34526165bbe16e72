using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Motors.Ensemble;

public sealed class MotorEnsembleTests
{
    private static MotorEnsemble Of(Nameplate plate, PlateTrust trust = PlateTrust.WithTolerances, ulong seed = 20) =>
        MotorEnsemble.Of(plate, trust, seed: seed).ShouldNotBeNull();

    private static Band<double> NoLoad(MotorEnsemble ensemble) => MotorBands.Of(ensemble).NoLoadCurrent.As(current => current.Amperes);

    private static InstrumentReading NoLoadReading(double amperes, double error = 0.02) => new InstrumentReading.NoLoadCurrent(
        LineCurrent.FromAmperes(amperes), Plates.Pump.Voltage, Plates.Pump.Frequency, Fraction.FromRatio(error));

    [Fact]
    public void The_same_seed_gives_the_same_bands_and_another_nearly_the_same()
    {
        MotorBands.Of(Of(Plates.Pump)).ShouldBe(MotorBands.Of(Of(Plates.Pump)));
        var (one, other) = (NoLoad(Of(Plates.Pump)), NoLoad(Of(Plates.Pump, seed: 5)));
        other.ShouldNotBe(one);
        other.P50.ShouldBe(one.P50, 0.03 * one.P50);
        other.HalfWidth().ShouldBe(one.HalfWidth(), 0.15 * one.HalfWidth());
    }

    [Fact]
    public void Half_of_the_members_lie_on_either_side_of_the_plate()
    {
        var bands = MotorBands.Of(Of(Plates.Pump));
        bands.RatedCurrent.P50.Amperes.ShouldBe(14.4, 0.0144);
        bands.RatedTorque.P50.NewtonMetres.ShouldBe(Plates.Pump.RatedTorque.NewtonMetres, 1e-3 * Plates.Pump.RatedTorque.NewtonMetres);
    }

    [Fact]
    public void An_exact_plate_leaves_no_band_to_what_it_prints()
    {
        var bands = MotorBands.Of(Of(Plates.Pump with { Rounding = new PlateRounding() }, PlateTrust.Exact));
        bands.RatedCurrent.P05.Amperes.ShouldBe(14.4, 1e-9);
        bands.RatedCurrent.P95.Amperes.ShouldBe(14.4, 1e-9);
        bands.RatedPowerFactor.P95.Ratio.ShouldBe(0.83, 1e-9);
    }

    [Fact]
    public void Tolerances_widen_every_band()
    {
        var (exact, real) = (MotorBands.Of(Of(Plates.Pump, PlateTrust.Exact)), MotorBands.Of(Of(Plates.Pump)));
        real.RatedCurrent.As(c => c.Amperes).HalfWidth().ShouldBeGreaterThan(exact.RatedCurrent.As(c => c.Amperes).HalfWidth());
        real.NoLoadCurrent.As(c => c.Amperes).HalfWidth().ShouldBeGreaterThan(exact.NoLoadCurrent.As(c => c.Amperes).HalfWidth());
        real.RatedEfficiency.As(e => e.Ratio).HalfWidth().ShouldBeGreaterThan(exact.RatedEfficiency.As(e => e.Ratio).HalfWidth());
    }

    [Fact]
    public void A_reading_moves_the_band_to_itself_and_narrows_it()
    {
        var before = Of(Plates.Pump);
        var after = before.After([NoLoadReading(6.0)]);
        NoLoad(after).P50.ShouldBe(6.0, 0.15);
        NoLoad(after).HalfWidth().ShouldBeLessThan(0.05);
        NoLoad(before).HalfWidth().ShouldBeGreaterThan(0.1);
        after.EffectiveSize.ShouldBeGreaterThan(200);
    }

    [Fact]
    public void What_the_reading_does_not_tell_alone_narrows_with_it()
    {
        var before = Of(Plates.Pump);
        var after = before.After([NoLoadReading(6.0)]);
        static double LockedRotor(MotorEnsemble ensemble) => MotorBands.Of(ensemble).LockedRotorCurrentRatio.As(ratio => ratio.Value).HalfWidth();
        LockedRotor(after).ShouldBeLessThan(0.9 * LockedRotor(before));
    }

    [Fact]
    public void Evidence_falls_with_a_reading_that_the_plate_does_not_expect()
    {
        var before = Of(Plates.Pump);
        before.LogEvidence.ShouldBe(0);
        var (likely, unlikely) = (before.After([NoLoadReading(6.3)]).LogEvidence, before.After([NoLoadReading(12.5)]).LogEvidence);
        (likely - unlikely).ShouldBeGreaterThan(3);
        double.IsFinite(before.After([NoLoadReading(1e6)]).LogEvidence).ShouldBeTrue();
    }

    [Fact]
    public void Readings_in_turn_tell_what_they_tell_together()
    {
        var before = Of(Plates.Pump);
        InstrumentReading resistance = new InstrumentReading.WindingResistance(Resistance.FromOhms(0.9), Temperature.FromCelsius(20), Fraction.FromRatio(0.01));
        var (together, inTurn) = (before.After([NoLoadReading(6.0), resistance]), before.After([NoLoadReading(6.0)]).After([resistance]));
        NoLoad(inTurn).P50.ShouldBe(NoLoad(together).P50, 0.15);
        inTurn.LogEvidence.ShouldBe(together.LogEvidence, 0.5);
    }

    [Fact]
    public void A_locked_rotor_current_narrows_and_a_code_letter_nearly_as_much()
    {
        var plain = NoLoad(Of(Plates.Pump, PlateTrust.Exact)).HalfWidth();
        var known = NoLoad(Of(Plates.Pump with { LockedRotorCurrentRatio = 6.8 }, PlateTrust.Exact)).HalfWidth();
        var letter = NoLoad(Of(Plates.Pump with { CodeLetter = 'H' }, PlateTrust.Exact)).HalfWidth();
        known.ShouldBeLessThan(0.6 * plain);
        letter.ShouldBeLessThan(0.8 * plain);
    }

    [Fact]
    public void Printed_torques_are_followed_by_bars_that_are_deep_enough()
    {
        var bands = MotorBands.Of(Of(Plates.Pump with { LockedRotorCurrentRatio = 7.2, LockedRotorTorqueRatio = 2.3, BreakdownTorqueRatio = 2.9 }));
        bands.LockedRotorTorqueRatio.P50.Value.ShouldBe(2.3, 0.35);
        bands.LockedRotorCurrentRatio.P50.Value.ShouldBe(7.2, 0.7);
        bands.BreakdownTorqueRatio.P50.Value.ShouldBe(2.9, 0.4);
    }

    [Fact]
    public void Something_that_is_no_induction_motor_has_no_ensemble() =>
        MotorEnsemble.Of(Plates.Pump with { Speed = ShaftSpeed.FromRpm(1500) }).ShouldBeNull();
}
