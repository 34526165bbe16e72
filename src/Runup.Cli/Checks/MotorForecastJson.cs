using System.Text.Json;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Diagnosis;
using Runup.Engineering.Motors.Ensemble;

namespace Runup.Cli.Checks;

/// <summary>What <c>motor --json</c> says beside the <c>motor</c> object: the motor on a drive, and the reading that would tell most.</summary>
internal static class MotorForecastJson
{
    internal static void Write(Utf8JsonWriter json, KnownMotor? known, DeltaOnStarVoltage? delta)
    {
        var forecast = known is null ? null : MotorOnDriveForecast.Of(known.Now);
        Uncoupled(json, "uncoupled", forecast?.Uncoupled);
        MotorJson.Band(json, "boost_for_rated_torque_percent", forecast?.Boost?.Boost.As(boost => boost.Percent));
        MotorJson.Band(json, "boost_current_A", forecast?.Boost?.Current.As(current => current.Amperes));
        Uncoupled(json, "uncoupled_with_boost", forecast?.WithBoost);
        json.WriteStartArray("breakdown_over_rated_power");
        foreach (var (frequency, margin) in forecast?.Breakdown ?? [])
        {
            json.WriteStartObject();
            json.Number("frequency_Hz", frequency.Hertz);
            MotorJson.Band(json, "ratio", margin.As(ratio => ratio.Value));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Delta(json, delta);
        Next(json, known is null ? null : NextReading.Best(known.Now, known.Readings.Taken));
    }

    private static void Uncoupled(Utf8JsonWriter json, string key, IReadOnlyList<UncoupledForecast>? rows)
    {
        json.WriteStartArray(key);
        foreach (var at in rows ?? [])
        {
            json.WriteStartObject();
            json.Number("frequency_Hz", at.Frequency.Hertz);
            json.Number("voltage_V", at.Voltage.Volts);
            json.Number("boost_percent", at.Boost.Percent);
            MotorJson.Band(json, "current_A", at.Current.As(current => current.Amperes));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Delta(Utf8JsonWriter json, DeltaOnStarVoltage? delta)
    {
        if (delta is null)
        {
            json.WriteNull("delta_on_star_voltage");
            return;
        }

        json.Object("delta_on_star_voltage", () =>
        {
            json.Number("voltage_V", delta.Voltage.Volts);
            json.Number("frequency_Hz", delta.Frequency.Hertz);
            json.Number("rated_current_A", delta.RatedCurrent.Amperes);
            MotorJson.Band(json, "torque_at_rated_current_Nm", delta.Torque.As(torque => torque.NewtonMetres));
            MotorJson.Band(json, "power_at_rated_current_kW", delta.Power.As(power => power.Watts / 1000));
            MotorJson.Band(json, "speed_at_rated_current_rpm", delta.Speed.As(speed => speed.Rpm));
            MotorJson.Band(json, "current_at_rated_torque_A", delta.Current.As(current => current.Amperes));
            MotorJson.Band(json, "breakdown_torque_ratio", delta.Breakdown.As(ratio => ratio.Value));
        });
    }

    private static void Next(Utf8JsonWriter json, NextReading? next)
    {
        if (next is null)
        {
            json.WriteNull("narrows_most");
            return;
        }

        json.Object("narrows_most", () =>
        {
            json.WriteString("reading", Snake(next.Reading.ToString()));
            json.WriteString("figure", Snake(next.Figure.ToString()));
            json.Number("half_width_percent", 100 * next.Before);
            json.Number("half_width_after_percent", 100 * next.After);
        });
    }

    private static string Snake(string name) => JsonNamingPolicy.SnakeCaseLower.ConvertName(name);
}
