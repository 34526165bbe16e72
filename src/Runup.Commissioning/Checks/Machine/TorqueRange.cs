using Runup.Engineering.Mechanics;
using Runup.Quantities;

namespace Runup.Commissioning.Checks.Machine;

/// <summary>The load over the whole speed range, against the motor's rating and against what it has at the drive's limit.</summary>
internal sealed class TorqueRange() : Check("machine.torque-range", Stage.Coupled)
{
    private const int Places = 16;
    private const double LowestPart = 0.05;
    private const double Rounding = 1.02;
    private const double Grave = 1.1;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (JobCheck.MissingForMotion(context) is { } missing)
        {
            return Unknown(missing, "whether the motor carries the load at every speed");
        }

        var points = Points(context).ToList();
        var stall = points.FirstOrDefault(point => point.Load > point.Available);
        if (stall.Load > 0)
        {
            return Stalls(context, stall);
        }

        if (context.Meant.Motion!.Acceleration is Acceleration.Stalls { At.RadiansPerSecond: > 0 } onTheWay)
        {
            var hertz = onTheWay.At.RadiansPerSecond * context.Meant.Circuit!.Poles.Pairs / (2 * Math.PI);
            return Stalls(context, (hertz, onTheWay.Needed.NewtonMetres, 0, onTheWay.Available.NewtonMetres));
        }

        var worst = points.MaxBy(point => point.Load / point.Rated);
        return worst.Load > worst.Rated * Rounding
            ? Overloaded(context, worst)
            : Fine($"at most {Said.Percent(worst.Load / worst.Rated)} of the motor's torque, at {Said.Number(worst.Hertz)} Hz");
    }

    private static IEnumerable<(double Hertz, double Load, double Rated, double Available)> Points(JobContext context)
    {
        var motion = context.Meant.Motion!;
        var rated_Nm = context.Meant.Nameplate!.RatedTorque.NewtonMetres;
        var highest = motion.MaximumFrequency.Hertz;
        var lowest = Math.Clamp(context.Job.Operation.MinimumFrequency?.Value.Hertz ?? 0, highest * LowestPart, highest);
        for (var place = 0; place < Places; place++)
        {
            var hertz = lowest + ((highest - lowest) * place / (Places - 1));
            var shaft = motion.SpeedAt(ElectricalFrequency.FromHertz(hertz));
            yield return (
                hertz,
                motion.Machine.LoadTorque(shaft).NewtonMetres,
                rated_Nm * Math.Min(1, context.Meant.Output.BaseFrequency.Hertz / hertz),
                motion.Motor.LargestTorque(shaft).Torque.NewtonMetres);
        }
    }

    private CheckResult.Violated Stalls(JobContext context, (double Hertz, double Load, double Rated, double Available) point) =>
        new(Id, Severity.Blocker, Blocks, new Basis.Physics("torque from the motor's circuit at the drive's current limit and voltage"))
        {
            Title = "The load is more than motor and drive have",
            Explanation = $"At {Said.Number(point.Hertz)} Hz the machine asks for {Said.Torque(point.Load)} at the motor's shaft, and the motor has {Said.Torque(point.Available)} at {Said.Number(context.Meant.CurrentLimit.Amperes)} A: it does not get there.",
            Remedy = point.Hertz > context.Meant.Output.BaseFrequency.Hertz * 1.01
                ? "A lower maximum frequency, or another gear ratio: above base frequency the torque falls."
                : "A larger motor and drive, another gear ratio, or less load; check torque and speed of the machine.",
            Value = point.Load,
            Limit = point.Available,
            Unit = "N·m",
        };

    private CheckResult.Violated Overloaded(JobContext context, (double Hertz, double Load, double Rated, double Available) point)
    {
        var cyclic = context.Job.Operation.Cycle.Count > 0;
        return new(Id, point.Load > point.Rated * Grave && !cyclic ? Severity.Blocker : Severity.Caution, Blocks, new Basis.Physics("rated torque T_N = P/ω, above base frequency T_N·f_b/f"))
        {
            Title = "The motor is overloaded",
            Explanation = $"At {Said.Number(point.Hertz)} Hz the machine asks for {Said.Torque(point.Load)} at the motor's shaft, {Said.Percent(point.Load / point.Rated)} of what it may give continuously there: the overload trips after minutes.",
            Remedy = cyclic ? "See machine.rms-torque for the mean over the cycle." : "Less load or speed, a larger motor, or the machine's torque checked again.",
            Value = point.Load,
            Limit = point.Rated,
            Unit = "N·m",
        };
    }
}
