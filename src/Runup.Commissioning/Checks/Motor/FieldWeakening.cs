using Runup.Engineering.Motors;

namespace Runup.Commissioning.Checks.Motor;

/// <summary>Running above base frequency.</summary>
internal sealed class FieldWeakening() : Check("motor.field-weakening", Stage.Coupled)
{
    private const double Rounding = 1.01;

    // Load may be so much of breakdown torque at most, to ride a dip of the supply.
    private const double Reserve = 1.3;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var (highest, corner) = (context.Job.Operation.MaximumFrequency.Value.Hertz, context.Output.BaseFrequency.Hertz);
        if (highest <= corner * Rounding)
        {
            return Fine($"{Said.Number(highest)} Hz, full flux up to {Said.Number(corner)} Hz");
        }

        if (JobCheck.MissingForMotion(context) is { } missing)
        {
            return Unknown(missing, $"whether the motor still carries the load at {Said.Number(highest)} Hz");
        }

        var motion = context.Motion!;
        var breakdown = Breakdown.Of(motion.Motor.Circuit, motion.Motor.Characteristic.At(motion.MaximumFrequency), motion.MaximumFrequency).Torque.NewtonMetres;
        var synchronous = motion.MaximumFrequency.SynchronousSpeed(motion.Motor.Circuit.Poles).RadiansPerSecond;
        var load = motion.Machine.LoadTorque(Quantities.ShaftSpeed.FromRadiansPerSecond(synchronous * (1 - context.Nameplate!.RatedSlip.Ratio))).NewtonMetres;
        return load * Reserve <= breakdown
            ? Fine($"{Said.Number(load)} N·m at {Said.Number(highest)} Hz of a breakdown torque of {Said.Number(breakdown)} N·m")
            : Finding(highest, corner, load, breakdown);
    }

    private CheckResult.Violated Finding(double highest, double corner, double load, double breakdown)
    {
        var beyond = load >= breakdown;
        return new(
            Id,
            beyond ? Severity.Blocker : Severity.Caution,
            Blocks,
            beyond ? new Basis.Physics("breakdown torque ∝ (U/f)²") : new Basis.CommonPractice("30 % between load and breakdown torque"))
        {
            Title = beyond ? "No torque left above base frequency" : "Little torque left above base frequency",
            Explanation = $"Above {Said.Number(corner)} Hz the flux falls: at {Said.Number(highest)} Hz the motor breaks down at {Said.Number(breakdown)} N·m and the machine asks for {Said.Number(load)} N·m.",
            Remedy = "A lower maximum frequency, another gear ratio, or a motor wound for it.",
            Value = load,
            Limit = beyond ? breakdown : breakdown / Reserve,
            Unit = "N·m",
        };
    }
}
