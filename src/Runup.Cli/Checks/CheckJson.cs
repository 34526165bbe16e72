using System.Text.Json;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;

namespace Runup.Cli.Checks;

/// <summary>The document of <c>check --json</c>. What is not computed yet is null.</summary>
internal static class CheckJson
{
    private static readonly string[] SupplyKeys = ["short_circuit_ratio", "input_current_A", "thd_i_percent", "harmonics_percent", "dc_bus_V", "true_power_factor", "ride_through_ms"];

    private static readonly string[] CableKeys = ["critical_length_m", "peak_terminal_voltage_V", "charging_current_A", "voltage_drop_percent"];

    internal static void Write(Utf8JsonWriter json, LoadedJob job, CheckReport report, RecordStory story)
    {
        var context = job.Context;
        json.WriteStartObject();
        json.WriteString("tag", job.Job.Tag);
        FindingsJson.Verdict(json, report);
        FindingsJson.Findings(json, report);
        json.Array("accepted", story.Accepted, (j, a) => Accepted(j, report, a));
        json.Object("motor", () => MotorJson.Write(json, context.Circuit, context.Printed.Known));
        json.Object("machine", () => Machine(json, MachineFigures.Of(context)));
        json.Object("supply", () => Nulls(json, SupplyKeys));
        json.Object("cable", () => Nulls(json, CableKeys));
        json.Object("drive", () => Drive(json, DriveFigures.Of(context)));
        json.WriteEndObject();
    }

    private static void Accepted(Utf8JsonWriter json, CheckReport report, At<RecordBody.FindingAccepted> accepted)
    {
        json.WriteStartObject();
        json.WriteString("id", accepted.Body.Finding);
        json.WriteString("by", accepted.Body.By);
        json.WriteString("because", accepted.Body.Because);
        json.WriteString("at", accepted.Time);
        json.WriteBoolean("as_it_is_now", report.Results.Any(accepted.Body.Covers));
        json.WriteEndObject();
    }

    private static void Machine(Utf8JsonWriter json, MachineFigures machine)
    {
        json.Number("total_inertia_kgm2", machine.TotalInertiaKgm2);
        json.Number("rms_torque_Nm", machine.RmsTorqueNm);
        json.Number("shortest_acceleration_s", machine.ShortestAccelerationS);
        json.Number("shortest_deceleration_s", machine.ShortestDecelerationS);
        json.Number("braking_energy_J", machine.BrakingEnergyJ);
        json.Number("braking_peak_W", machine.BrakingPeakW);
        json.Number("braking_mean_W", machine.BrakingMeanW);
        json.Number("braking_resistor_ohm_min", machine.BrakingResistorOhmMin);
        json.Number("braking_resistor_ohm_max", machine.BrakingResistorOhmMax);
    }

    private static void Drive(Utf8JsonWriter json, DriveFigures drive)
    {
        json.Number("derated_current_A", drive.DeratedCurrentA);
        json.Number("current_margin_percent", drive.CurrentMarginPercent);
        json.Number("losses_W", drive.LossesW);
    }

    private static void Nulls(Utf8JsonWriter json, IEnumerable<string> keys)
    {
        foreach (var key in keys)
        {
            json.WriteNull(key);
        }
    }
}
