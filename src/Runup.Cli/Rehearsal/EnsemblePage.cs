using System.Text.Json;
using Runup.Cli.Terminal;
using Runup.Dynamics;
using Runup.Engineering.Motors.Ensemble;
using Runup.Settings;

namespace Runup.Cli.Rehearsal;

/// <summary>What a rehearsal over all motors that the plate may stand for says, for people and for programs.</summary>
internal static class EnsemblePage
{
    internal static void Write(Page page, RehearsedEnsemble rehearsed, string reached)
    {
        var ensemble = rehearsed.Result;
        page.Heading($"With {ensemble.Members.Count} motors that the plate may stand for, the same orders at the same times");
        page.Table(
            [new(""), new("low", Digits: true), new("middle", Digits: true), new("high", Digits: true), new(""), new("")],
            [
                Row($"from 0 to {reached}", ensemble, m => m.TimeToSpeedS, "s"),
                Row("from there to standstill", ensemble, StopOfStarted, "s"),
                Row("highest current", ensemble, m => m.PeakCurrentA, "A"),
                Row("highest DC bus", ensemble, m => m.PeakDcBusV, "V"),
            ]);
        page.Line($"5 of 100 motors lie below low, 5 above high.{(rehearsed.Seed == MotorEnsemble.DefaultSeed ? "" : $" Drawn with --seed {rehearsed.Seed}.")}");
        if (ensemble.Members.Count(m => m.TimeToSpeedS is null && m.Tripped is null && !m.RanAway) is > 0 and var late)
        {
            page.Line($"{late} of them had not come to speed when the stop was ordered: the current limit holds them, the load is too much for them, or a brake stays closed.");
        }

        var trips = Trips(ensemble);
        page.Line(trips.Count == 0
            ? $"None of them trips in these {RehearsalPage.Text(ensemble.Trace.TimeS[^1])} s."
            : $"Of {ensemble.Members.Count} motors, these would trip the drive: {string.Join(", ", trips.Select(t => $"{t.Count} by {t.Cause.Name()}"))}.");
        if (ensemble.Members.Count(m => m.RanAway) is > 0 and var gone)
        {
            page.Line($"With {gone} of them the simulation broke down; their last readings stand for the rest.");
        }
    }

    internal static void Write(Utf8JsonWriter json, RehearsedEnsemble rehearsed)
    {
        var ensemble = rehearsed.Result;
        json.WriteStartObject("ensemble");
        json.WriteNumber("members", ensemble.Members.Count);
        json.WriteNumber("seed", rehearsed.Seed);
        json.Array("trips", Trips(ensemble), (j, t) =>
        {
            j.WriteStartObject();
            j.WriteString("cause", t.Cause.Name());
            j.WriteNumber("members", t.Count);
            j.WriteEndObject();
        });
        json.WriteNumber("broke_down", ensemble.Members.Count(m => m.RanAway));
        Figures(json, ensemble);
        json.Array("t_s", ensemble.Trace.TimeS, (j, t) => j.NumberValue(t));
        Column(json, "output_frequency_Hz", ensemble.Trace.FrequencyHz);
        Column(json, "speed_rpm", ensemble.Trace.SpeedRpm);
        Column(json, "output_current_A", ensemble.Trace.CurrentA);
        Column(json, "dc_bus_V", ensemble.Trace.DcBusV);
        Column(json, "torque_Nm", ensemble.Trace.TorqueNm);
        json.WriteEndObject();
    }

    internal static void Figures(Utf8JsonWriter json, EnsembleResult ensemble)
    {
        Figure(json, "peak_current_A", ensemble.BandOf(m => m.PeakCurrentA));
        Figure(json, "peak_dc_bus_V", ensemble.BandOf(m => m.PeakDcBusV));
        Figure(json, "time_to_speed_s", ensemble.BandOf(m => m.TimeToSpeedS));
        Figure(json, "time_to_stop_s", ensemble.BandOf(StopOfStarted));
    }

    // A motor that never turned stands at once, which says nothing of a stop.
    private static double? StopOfStarted(MemberResult member) => member.TimeToSpeedS is null ? null : member.TimeToStopS;

    private static List<(TripCause Cause, int Count)> Trips(EnsembleResult ensemble) =>
        [.. ensemble.Members.Where(m => m.Tripped is not null).GroupBy(m => m.Tripped!.Value).Select(g => (g.Key, g.Count())).OrderByDescending(t => t.Item2)];

    private static IReadOnlyList<string> Row(string what, EnsembleResult ensemble, Func<MemberResult, double?> figure, string unit)
    {
        var without = ensemble.Members.Count(m => figure(m) is null);
        return ensemble.BandOf(figure) is { } band
            ? [what, RehearsalPage.Text(band.P05), RehearsalPage.Text(band.P50), RehearsalPage.Text(band.P95), unit, without == 0 ? "" : $"{without} of {ensemble.Members.Count} did not"]
            : [what, "", "not reached", "", unit, ""];
    }

    private static void Figure(Utf8JsonWriter json, string key, Band<double>? band)
    {
        json.WriteStartObject(key);
        json.Number("p05", band?.P05);
        json.Number("p50", band?.P50);
        json.Number("p95", band?.P95);
        json.WriteEndObject();
    }

    private static void Column(Utf8JsonWriter json, string key, IReadOnlyList<Band<double>> bands)
    {
        json.WriteStartObject(key);
        json.Array("p05", bands, (j, b) => j.NumberValue(b.P05));
        json.Array("p50", bands, (j, b) => j.NumberValue(b.P50));
        json.Array("p95", bands, (j, b) => j.NumberValue(b.P95));
        json.WriteEndObject();
    }
}
