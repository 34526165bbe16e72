using Runup.Commissioning.Entry;

namespace Runup.Commissioning.FirstRun;

/// <summary>One round of readings during a run.</summary>
/// <param name="At">Time from the first run command of the step.</param>
/// <param name="Status">State and readings.</param>
internal sealed record RunSample(TimeSpan At, DriveStatus Status);

/// <summary>Samples as rows of a trend; a column that the drive does not offer is left out.</summary>
internal static class RunTrend
{
    private static readonly (string Name, Func<DriveStatus, double?> Of)[] Columns =
    [
        ("output_frequency_Hz", s => s.OutputFrequencyHz), ("output_current_A", s => s.OutputCurrentA), ("dc_bus_V", s => s.DcBusV),
        ("output_voltage_V", s => s.OutputVoltageV), ("speed_rpm", s => s.SpeedRpm), ("torque_percent", s => s.TorquePercent),
    ];

    public static (IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<double>> Rows) Of(IReadOnlyList<RunSample> samples)
    {
        var offered = Columns.Where(c => samples.Count > 0 && samples.All(s => c.Of(s.Status) is not null)).ToList();
        return (["time_s", .. offered.Select(c => c.Name)],
            [.. samples.Select(s => (IReadOnlyList<double>)[Math.Round(s.At.TotalSeconds, 4), .. offered.Select(c => c.Of(s.Status)!.Value)])]);
    }
}
