using System.Text.Json;
using Runup.Cli.Terminal;
using Runup.Commissioning.Diagnosis;
using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;

namespace Runup.Cli.Checks;

/// <summary>The <c>motor</c> object: the circuit that fits the plate best, and what the motors that fit it do, as bands.</summary>
internal static class MotorJson
{
    internal static void Write(Utf8JsonWriter json, EquivalentCircuit? circuit, KnownMotor? known)
    {
        json.Object("circuit", () =>
        {
            json.Number("stator_resistance_ohm", circuit?.StatorResistance.Ohms);
            json.Number("stator_leakage_ohm", circuit?.StatorLeakage.Ohms);
            json.Number("magnetizing_ohm", circuit?.Magnetizing.Ohms);
            json.Number("rotor_leakage_ohm", circuit?.RotorLeakage.Ohms);
            json.Number("rotor_resistance_ohm", circuit?.RotorResistance.Ohms);
            json.Number("core_loss_ohm", circuit?.CoreLoss?.Ohms);
            json.Number("friction_loss_W", circuit?.FrictionLoss.Watts);
            json.Number("stray_loss_W", circuit?.StrayLoss.Watts);
        });
        SecondCage(json, circuit?.SecondCage);
        json.Number("pole_count", known?.Now.Plate.Poles.Poles);
        json.Number("rated_slip", known?.Now.Plate.RatedSlip.Ratio);
        Bands(json, known is null ? null : MotorBands.Of(known.Now));
        if (known is { HasReadings: true })
        {
            json.Object("before", () => Bands(json, MotorBands.Of(known.FromPlate)));
        }
        else
        {
            json.WriteNull("before");
        }
    }

    private static void SecondCage(Utf8JsonWriter json, RotorCage? cage)
    {
        if (cage is not { } second)
        {
            json.WriteNull("rotor_2");
            return;
        }

        json.Object("rotor_2", () =>
        {
            json.Number("rotor_leakage_ohm", second.Leakage.Ohms);
            json.Number("rotor_resistance_ohm", second.Resistance.Ohms);
        });
    }

    private static void Bands(Utf8JsonWriter json, MotorBands? bands)
    {
        Band(json, "rated_torque_Nm", bands?.RatedTorque.As(torque => torque.NewtonMetres));
        Band(json, "rated_current_A", bands?.RatedCurrent.As(current => current.Amperes));
        Band(json, "rated_power_factor", bands?.RatedPowerFactor.As(factor => factor.Ratio));
        Band(json, "rated_efficiency", bands?.RatedEfficiency.As(efficiency => efficiency.Ratio));
        Band(json, "no_load_current_A", bands?.NoLoadCurrent.As(current => current.Amperes));
        Band(json, "locked_rotor_current_ratio", bands?.LockedRotorCurrentRatio.As(ratio => ratio.Value));
        Band(json, "locked_rotor_torque_ratio", bands?.LockedRotorTorqueRatio.As(ratio => ratio.Value));
        Band(json, "breakdown_torque_ratio", bands?.BreakdownTorqueRatio.As(ratio => ratio.Value));
    }

    internal static void Band(Utf8JsonWriter json, string key, Band<double>? band) => json.Object(key, () =>
    {
        json.Number("p05", band?.P05);
        json.Number("p50", band?.P50);
        json.Number("p95", band?.P95);
    });
}
