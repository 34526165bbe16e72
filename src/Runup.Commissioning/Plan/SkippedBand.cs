using Runup.Commissioning.Checks;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Plan;

/// <summary>A band of output frequency in which the machine would turn at one of its critical speeds.</summary>
/// <remarks>f = (n·i + slip speed)·p/120 with the load's slip at that speed; the width by the same gear. Width where none is named: a tenth of the speed; common practice, no source.</remarks>
/// <param name="Speed">Critical speed of the machine's shaft.</param>
/// <param name="Centre">Output frequency at that speed.</param>
/// <param name="Width">Full width.</param>
internal sealed record SkippedBand(ShaftSpeed Speed, ElectricalFrequency Centre, ElectricalFrequency Width)
{
    private const double UsualWidth = 0.1;

    /// <summary>Whether the band touches a range of frequencies.</summary>
    internal bool Touches(double low_Hz, double high_Hz) => Centre.Hertz + (Width.Hertz / 2) >= low_Hz && Centre.Hertz - (Width.Hertz / 2) <= high_Hz;

    /// <summary>The bands that the job names and that lie in its range of frequencies, slowest first; empty where the plate cannot be used.</summary>
    internal static IReadOnlyList<SkippedBand> InRange(JobContext context)
    {
        if (context.Meant.Nameplate is not { } plate || context.Job.Machine.CriticalSpeeds is not { } speeds)
        {
            return [];
        }

        var operation = context.Job.Operation;
        var ratio = context.Job.Machine.GearRatio?.Value.Value is > 0 and var stated ? stated : 1;
        var all = from critical in speeds
                  let speed = critical.Speed.Value
                  where speed.RadiansPerSecond > 0
                  let motor = ShaftSpeed.FromRadiansPerSecond(speed.RadiansPerSecond * ratio)
                  let torque = (context.Meant.Machine.Machine?.LoadTorque(motor).NewtonMetres ?? 0) / plate.RatedTorque.NewtonMetres
                  let centre = SlipLaw.Of(plate).FrequencyAtRatedFlux(motor, Fraction.FromRatio(Math.Clamp(torque, -1.5, 1.5)))
                  let width_Hz = (critical.Width?.Value.RadiansPerSecond ?? (UsualWidth * speed.RadiansPerSecond)) * ratio * plate.Poles.Pairs / (2 * Math.PI)
                  select new SkippedBand(speed, centre, ElectricalFrequency.FromHertz(width_Hz));
        return [.. all.Where(band => band.Touches(operation.MinimumFrequency?.Value.Hertz ?? 0, operation.MaximumFrequency.Value.Hertz)).OrderBy(band => band.Centre.Hertz)];
    }
}
