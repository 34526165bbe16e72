using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Motors;

/// <summary>Any plate gets an answer: a circuit and bands of real numbers, or what stands in the way. With RUNUP_LONG=1, a hundred thousand of them.</summary>
public sealed class PlateFuzzTests
{
    private const int Members = 48;
    private static readonly int Plates = Environment.GetEnvironmentVariable("RUNUP_LONG") is null ? 2000 : 100_000;

    [Fact]
    public void Random_plates_bring_no_exception_no_endless_loop_and_no_number_that_is_none()
    {
        var random = new Random(2);
        var (fitted, bands) = (0, 0);
        for (var round = 0; round < Plates; round++)
        {
            var plate = AnyPlate.From(random);
            switch (CircuitFit.Of(plate))
            {
                case CircuitFit.Fitted fit:
                    fitted++;
                    Holds(fit, plate);
                    bands += Ensemble(plate, round) ? 1 : 0;
                    break;
                case CircuitFit.NotPossible(var obstacles):
                    obstacles.ShouldNotBeEmpty();
                    Ensemble(plate, round);
                    break;
            }
        }

        fitted.ShouldBeGreaterThan(Plates / 10);

        // A fitted plate whose efficiency or power factor is that of no motor (a hundredth, say) has no members.
        bands.ShouldBeGreaterThan((int)(0.9 * fitted));
    }

    private static void Holds(CircuitFit.Fitted fit, Nameplate plate)
    {
        foreach (var residual in fit.Residuals)
        {
            double.IsFinite(residual.Relative.Ratio).ShouldBeTrue($"{plate}");
        }

        foreach (var datum in new[] { PlateDatum.Output, PlateDatum.Current, PlateDatum.Speed })
        {
            fit.Residuals.Single(r => r.Datum == datum).Relative.Ratio.ShouldBe(0, 1e-6, $"{datum} {plate}");
        }

        MotorPrediction.From(fit, plate).NoLoadCurrent.Amperes.ShouldBeGreaterThan(0);
    }

    private static bool Ensemble(Nameplate plate, int round)
    {
        if (MotorEnsemble.Of(plate, round % 2 == 0 ? PlateTrust.Exact : PlateTrust.WithTolerances, Members, (ulong)round) is not { } ensemble)
        {
            return false;
        }

        Finite(ensemble, plate);
        if (round % 10 == 0)
        {
            var frequency = ElectricalFrequency.FromHertz(10);
            MotorForecast.NoLoadCurrent(ensemble, ensemble.StraightLine, frequency).P50.Amperes.ShouldBeGreaterThan(0, $"{plate}");
            _ = MotorForecast.Boost(ensemble, ensemble.StraightLine, plate.RatedTorque);
            _ = NextReading.Best(ensemble, []);
            var absurd = new InstrumentReading.NoLoadCurrent(LineCurrent.FromAmperes(plate.Current.Amperes * Math.Pow(10, (round % 70 / 10) - 3)), plate.Voltage, plate.Frequency, Fraction.FromRatio(0.02));
            Finite(ensemble.After([absurd]), plate);
        }

        return true;
    }

    private static void Finite(MotorEnsemble ensemble, Nameplate plate)
    {
        var bands = MotorBands.Of(ensemble);
        bands.NoLoadCurrent.P05.Amperes.ShouldBeGreaterThan(0, $"{plate}");
        bands.NoLoadCurrent.P95.Amperes.ShouldBeGreaterThanOrEqualTo(bands.NoLoadCurrent.P05.Amperes, $"{plate}");
        bands.LockedRotorCurrentRatio.P50.Value.ShouldBeGreaterThan(0, $"{plate}");
        bands.BreakdownTorqueRatio.P50.Value.ShouldBeGreaterThan(0, $"{plate}");
        double.IsFinite(ensemble.LogEvidence).ShouldBeTrue($"{plate}");
        ensemble.EffectiveSize.ShouldBeGreaterThanOrEqualTo(1 - 1e-9, $"{plate}");
    }
}
