using Runup.Commissioning.Checks;
using Runup.Settings;

namespace Runup.Commissioning.Comparison;

/// <summary>The highest frequency against the machine and what is asked for.</summary>
internal static class SpeedConsequences
{
    // Speeds are given to a per cent at best.
    private const double Tolerance = 0.01;

    internal static string? OfMaximum(SettingSet held, JobContext context)
    {
        if (held.Number(Setting.MaximumFrequency) is not { } highest_Hz)
        {
            return null;
        }

        var asked_Hz = context.Job.Operation.MaximumFrequency.Value.Hertz;
        if (context.Job.Machine.LargestSpeed?.Value is { } largest && context.Meant.Nameplate is { } plate)
        {
            var ratio = context.Job.Machine.GearRatio?.Value.Value is > 0 and var stated ? stated : 1;
            var reached_rpm = ((120 * highest_Hz / plate.Poles.Poles) - (plate.SynchronousSpeed.Rpm - plate.Speed.Rpm)) / ratio;
            if (reached_rpm > largest.Rpm * (1 + Tolerance))
            {
                return $"turns the machine at up to {Said.Number(reached_rpm, 4)} rpm; it is for {Said.Number(largest.Rpm, 4)} rpm";
            }
        }

        return highest_Hz < asked_Hz * (1 - Tolerance) ? $"the {Said.Number(asked_Hz)} Hz that the job asks for are not reached" : null;
    }
}
