using Runup.Quantities;

namespace Runup.Commissioning.Checks.Machine;

/// <summary>Continuous torque at low speed with the fan on the shaft.</summary>
/// <remarks>With the maker's curve, against it. Without, a screen: fan on the shaft, continuous torque, below half speed; common practice, no source.</remarks>
internal sealed class LowSpeedCooling() : Check("machine.low-speed-cooling", Stage.Coupled)
{
    private const double HalfSpeed = 0.5;

    // Below this part of rated torque the motor is so little heated that it needs no wind; common practice, no source.
    private const double Light = 0.4;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (JobCheck.MissingForMotion(context) is { } missing)
        {
            return Unknown(missing, "how warm the motor gets at low speed");
        }

        if (context.Job.Motor.ContinuousTorque is { Count: > 0 } curve)
        {
            return AgainstCurve(context, curve);
        }

        if (Cooling.HasOwnFan(context.Job) == true)
        {
            return Fine("cooled at every speed");
        }

        var rated_Hz = context.Meant.Nameplate!.Frequency.Hertz;
        if (context.Job.Operation.MinimumFrequency?.Value.Hertz is not { } lowest_Hz)
        {
            return LoadAt(context, HalfSpeed * rated_Hz) <= Light && LoadAt(context, 0.1 * rated_Hz) <= Light
                ? Fine($"at half speed the load is {Said.Percent(LoadAt(context, HalfSpeed * rated_Hz))} of the motor's torque")
                : Unknown("the lowest running frequency (operation.minimum-frequency)", "whether the fan on the shaft cools enough");
        }

        var load = LoadAt(context, lowest_Hz);
        if (lowest_Hz >= HalfSpeed * rated_Hz * (1 - 1e-9) || load <= Light)
        {
            return Fine($"{Said.Percent(load)} of the motor's torque at {Said.Number(lowest_Hz)} Hz");
        }

        return Cooling.HasOwnFan(context.Job) is null
            ? Unknown("how the motor is cooled (motor.plate.cooling, such as IC411)", $"whether it stays cool with {Said.Percent(load)} of its torque at {Said.Number(lowest_Hz)} Hz")
            : Screened(lowest_Hz, rated_Hz, load);
    }

    private static double LoadAt(JobContext context, double frequency_Hz)
    {
        var motion = context.Meant.Motion!;
        var speed = motion.SpeedAt(ElectricalFrequency.FromHertz(Math.Clamp(frequency_Hz, 0.1, 1e5)));
        return motion.Machine.LoadTorque(speed).NewtonMetres / context.Meant.Nameplate!.RatedTorque.NewtonMetres;
    }

    private CheckResult.Violated Screened(double lowest_Hz, double rated_Hz, double load) =>
        new(Id, Severity.Caution, Blocks, new Basis.CommonPractice("fan on the shaft, continuous torque, below half speed"))
        {
            Title = "Little cooling at low speed",
            Explanation = $"At {Said.Number(lowest_Hz)} Hz the fan on the shaft hardly turns, and the machine asks for {Said.Percent(load)} of the motor's torque there.",
            Remedy = "A separate fan, a higher minimum frequency or gear ratio; or the maker's curve of continuous torque (motor.continuous-torque), which decides it. A sensor in the winding at least.",
            Value = lowest_Hz,
            Limit = HalfSpeed * rated_Hz,
            Unit = "Hz",
        };

    private CheckResult AgainstCurve(JobContext context, IReadOnlyList<(ElectricalFrequency Frequency, Fraction Torque)> curve)
    {
        var lowest_Hz = context.Job.Operation.MinimumFrequency?.Value.Hertz ?? 0;
        var places = curve.Select(point => point.Frequency.Hertz).Where(hertz => hertz >= lowest_Hz && hertz <= context.Meant.Motion!.MaximumFrequency.Hertz)
            .Append(lowest_Hz).Append(context.Meant.Motion!.MaximumFrequency.Hertz);
        var (hertz, load, permitted) = places.Select(place => (place, LoadAt(context, place), Permitted(curve, place))).MaxBy(place => place.Item2 - place.Item3);
        return load <= permitted * 1.01
            ? Fine($"{Said.Percent(load)} at {Said.Number(hertz)} Hz of the {Said.Percent(permitted)} that the maker permits")
            : new CheckResult.Violated(Id, Severity.Blocker, Blocks, new Basis.JobData("motor.continuous-torque, the maker's curve"))
            {
                Title = "More torque than the maker permits at that speed",
                Explanation = $"At {Said.Number(hertz)} Hz the machine asks for {Said.Percent(load)} of rated torque and the maker permits {Said.Percent(permitted)}.",
                Remedy = "A separate fan, a higher minimum frequency or gear ratio, or a larger motor.",
                Value = load * 100,
                Limit = permitted * 100,
                Unit = "%",
            };
    }

    private static double Permitted(IReadOnlyList<(ElectricalFrequency Frequency, Fraction Torque)> curve, double hertz)
    {
        var points = curve.OrderBy(point => point.Frequency.Hertz).ToList();
        var upper = points.FindIndex(point => point.Frequency.Hertz >= hertz);
        if (upper <= 0)
        {
            return points[upper < 0 ? ^1 : 0].Torque.Ratio;
        }

        var (below, above) = (points[upper - 1], points[upper]);
        var part = (hertz - below.Frequency.Hertz) / (above.Frequency.Hertz - below.Frequency.Hertz);
        return below.Torque.Ratio + (part * (above.Torque.Ratio - below.Torque.Ratio));
    }
}
