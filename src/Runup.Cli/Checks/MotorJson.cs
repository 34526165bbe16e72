using System.Text.Json;
using Runup.Cli.Terminal;
using Runup.Engineering.Motors;

namespace Runup.Cli.Checks;

/// <summary>The <c>motor</c> object: the circuit, and what it predicts. The ensemble's p05 and p95 come later and are null until then.</summary>
internal static class MotorJson
{
    internal static void Write(Utf8JsonWriter json, EquivalentCircuit? circuit, MotorPrediction? motor)
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
        json.WriteNull("rotor_2");
        json.Number("pole_count", motor?.Poles.Poles);
        json.Number("rated_slip", motor?.RatedSlip.Ratio);
        Band(json, "rated_torque_Nm", motor?.RatedTorque.NewtonMetres);
        Band(json, "rated_current_A", motor?.RatedCurrent.Amperes);
        Band(json, "rated_power_factor", motor?.RatedPowerFactor.Ratio);
        Band(json, "rated_efficiency", motor?.RatedEfficiency.Ratio);
        Band(json, "no_load_current_A", motor?.NoLoadCurrent.Amperes);
        Band(json, "locked_rotor_current_ratio", motor?.LockedRotorCurrentRatio.Value);
        Band(json, "locked_rotor_torque_ratio", motor?.LockedRotorTorqueRatio.Value);
        Band(json, "breakdown_torque_ratio", motor?.BreakdownTorqueRatio.Value);
        json.WriteNull("before");
    }

    private static void Band(Utf8JsonWriter json, string key, double? bestFit) => json.Object(key, () =>
    {
        json.WriteNull("p05");
        json.Number("p50", bestFit);
        json.WriteNull("p95");
    });
}
