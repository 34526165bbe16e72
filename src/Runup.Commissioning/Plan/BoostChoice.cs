using Runup.Commissioning.Checks;
using Runup.Engineering.Drives;
using Runup.Engineering.Mechanics;
using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Commissioning.Plan;

/// <summary>How much voltage is added at standstill.</summary>
/// <param name="Boost">Of rated voltage, rounded up to a tenth of a per cent.</param>
/// <param name="Highest">The boost at which the motor draws its rated current at standstill from direct voltage: √3·Rs·I_N/U_N; above it the motor is heated for nothing.</param>
/// <param name="Frequency">Output frequency at which the shaft lets go; null where no breakaway torque is reckoned with.</param>
/// <param name="Current">Output current there; null as before.</param>
/// <param name="IsEnough">Whether the motor has the breakaway torque at rated flux at all.</param>
/// <param name="Reason">Why, with the numbers.</param>
public sealed record BoostChoice(Fraction Boost, Fraction Highest, ElectricalFrequency? Frequency, LineCurrent? Current, bool IsEnough, string Reason)
{
    private const double Step = 0.001;

    /// <summary>The boost for a motor on a characteristic.</summary>
    /// <param name="circuit">The motor.</param>
    /// <param name="characteristic">Voltage against frequency; its own boost is left out.</param>
    /// <param name="rated">Rated current.</param>
    /// <param name="breakaway">Torque to break away, at the motor's shaft; null where none is known.</param>
    /// <param name="motors">The motors that the plate may stand for: the boost is then enough for nine of ten of them, within what the others bear; null: only the one that fits best counts.</param>
    /// <param name="bearable">The drive's current limit, at which a start hangs.</param>
    public static BoostChoice For(EquivalentCircuit circuit, VoltsPerHertz characteristic, LineCurrent rated, Torque? breakaway, MotorEnsemble? motors, LineCurrent bearable)
    {
        var best = OfBestFit(circuit, characteristic, rated, breakaway);
        return motors is not null && best.IsEnough
            ? BoostForMost.Of(best, motors, boost => StartShare.Of(motors, characteristic with { Boost = boost }, breakaway, bearable), "break away", bearable).Choice
            : best;
    }

    private static Fraction RoundedUp(double ratio) => Fraction.FromRatio(Math.Ceiling((ratio / Step) - 1e-9) * Step);

    private static BoostChoice OfBestFit(EquivalentCircuit circuit, VoltsPerHertz characteristic, LineCurrent rated, Torque? breakaway)
    {
        var rated_V = characteristic.RatedVoltage.Volts;
        var highest = Fraction.FromRatio(Math.Sqrt(3) * circuit.StatorResistance.Ohms * rated.Amperes / rated_V);
        return breakaway is not { NewtonMetres: > 0 } torque
            ? ForFluxAlone(circuit, rated_V, highest)
            : TorqueBoost.For(circuit, characteristic, torque) switch
            {
                TorqueBoost.Required required => new(
                    RoundedUp(required.Boost.Ratio),
                    highest,
                    required.Frequency,
                    required.Current,
                    true,
                    $"breakaway torque {Said.Number(torque.NewtonMetres)} N·m at the motor's shaft needs rated flux at {Said.Number(required.Frequency.Hertz)} Hz: {Said.Number(required.Voltage.Volts)} V and {Said.Number(required.Current.Amperes)} A; the characteristic alone gives {Said.Number((characteristic with { Boost = default }).At(required.Frequency).Volts)} V"),
                TorqueBoost.NotAttainable not => new(
                    RoundedUp(highest.Ratio),
                    highest,
                    null,
                    null,
                    false,
                    $"the breakaway torque {Said.Number(torque.NewtonMetres)} N·m is beyond the {Said.Number(not.Largest.NewtonMetres)} N·m that the motor has at standstill with rated flux; the boost is left where it draws rated current"),
                _ => throw new System.Diagnostics.UnreachableException(),
            };
    }

    /// <summary>Enough to hold the flux without load: b = √3·Rs·I_0/U_N.</summary>
    private static BoostChoice ForFluxAlone(EquivalentCircuit circuit, double rated_V, Fraction highest)
    {
        var noLoad_A = CircuitSolution.Synchronous(circuit, circuit.RatedVoltage, circuit.RatedFrequency).Current.Amperes;
        var drop_V = Math.Sqrt(3) * circuit.StatorResistance.Ohms * noLoad_A;
        return new(
            RoundedUp(drop_V / rated_V),
            highest,
            null,
            null,
            true,
            $"no breakaway torque is known: the boost covers the stator's drop at no-load current, √3·Rs·I_0 = √3 · {Said.Number(circuit.StatorResistance.Ohms)} Ω · {Said.Number(noLoad_A)} A = {Said.Number(drop_V)} V");
    }
}
