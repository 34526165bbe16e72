using System.Text.Json;
using Runup.Cli.Terminal;
using Runup.Dynamics;
using Runup.Settings;

namespace Runup.Cli.Rehearsal;

/// <summary><c>rehearse --json</c>: one number for each figure, or with <c>--ensemble</c> its band and beside it the number by the plate's own circuit.</summary>
internal static class RehearsalJson
{
    internal static void Write(RehearsalResult result, RehearsedEnsemble? ensemble, DetailWords? detail) => JsonOut.Write(json =>
    {
        json.WriteStartObject();
        json.Array("events", result.Events, (j, e) =>
        {
            j.WriteStartObject();
            j.Number("t_s", e.TimeS);
            j.WriteString("what", e.What.Name());
            j.WriteEndObject();
        });
        if (ensemble is null)
        {
            Figures(json, result);
        }
        else
        {
            EnsemblePage.Figures(json, ensemble.Result);
            json.WriteStartObject("by_plate");
            Figures(json, result);
            json.WriteEndObject();
        }

        json.Number("peak_current_t_s", result.PeakCurrentAtS);
        json.Number("largest_mean_current_A", result.LargestMeanCurrentA);
        json.Number("current_at_speed_A", result.CurrentAtSpeedA);
        json.Number("lowest_dc_bus_V", result.LowestDcBusV);
        json.WriteString("tripped", result.Tripped?.Name());
        json.WriteString("broke_down", result.Breakdown?.ToString());
        if (detail is not null)
        {
            json.WriteStartObject("detail");
            json.WriteNumber("cages", detail.Cages);
            json.Number("iron_share_percent", detail.IronShare.Percent);
            json.WriteEndObject();
        }

        if (ensemble is not null)
        {
            EnsemblePage.Write(json, ensemble);
        }

        json.WriteEndObject();
    });

    private static void Figures(Utf8JsonWriter json, RehearsalResult result)
    {
        json.Number("peak_current_A", result.PeakCurrentA);
        json.Number("peak_dc_bus_V", result.PeakDcBusV);
        json.Number("time_to_speed_s", result.TimeToSpeedS);
        json.Number("time_to_stop_s", result.TimeToStopS);
    }
}
