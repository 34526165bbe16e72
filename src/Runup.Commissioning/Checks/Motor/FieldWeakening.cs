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
        var (highest, corner) = (context.Job.Operation.MaximumFrequency.Value.Hertz, context.Meant.Output.BaseFrequency.Hertz);
        if (highest <= corner * Rounding)
        {
            return Fine($"{Said.Number(highest)} Hz, full flux up to {Said.Number(corner)} Hz");
        }

        if (JobCheck.MissingForMotion(context) is { } missing)
        {
            return Unknown(missing, $"whether the motor still carries the load at {Said.Number(highest)} Hz");
        }

        var motion = context.Meant.Motion!;
        var breakdown = Breakdown.Of(motion.Motor.Circuit, motion.Motor.Characteristic.At(motion.MaximumFrequency), motion.MaximumFrequency).Torque.NewtonMetres;
        var load = motion.Machine.LoadTorque(motion.SpeedAt(motion.MaximumFrequency)).NewtonMetres;
        var continuous = context.Meant.Nameplate!.RatedTorque.NewtonMetres * corner / highest;
        if (load * Reserve > breakdown)
        {
            return BreaksDown(highest, corner, load, breakdown);
        }

        return load > continuous * Rounding * Rounding
            ? Overloads(highest, corner, load, continuous)
            : Fine($"{Said.Torque(load)} at {Said.Number(highest)} Hz; the motor has {Said.Torque(continuous)} continuously there and breaks down at {Said.Torque(breakdown)}");
    }

    private CheckResult.Violated Overloads(double highest, double corner, double load, double continuous) =>
        new(Id, Severity.Caution, Blocks, new Basis.Physics("above base frequency T = T_N·f_b/f at rated current"))
        {
            Title = "More load above base frequency than the motor carries there",
            Explanation = $"Above {Said.Number(corner)} Hz the voltage stays and the torque falls: at {Said.Number(highest)} Hz the motor gives {Said.Torque(continuous)} continuously and the machine asks for {Said.Torque(load)}.",
            Remedy = "A lower maximum frequency, another gear ratio, or a larger motor.",
            Value = load,
            Limit = continuous,
            Unit = "N·m",
        };

    private CheckResult.Violated BreaksDown(double highest, double corner, double load, double breakdown)
    {
        var beyond = load >= breakdown;
        return new(
            Id,
            beyond ? Severity.Blocker : Severity.Caution,
            Blocks,
            beyond ? new Basis.Physics("breakdown torque ∝ (U/f)²") : new Basis.CommonPractice("30 % between load and breakdown torque"))
        {
            Title = beyond ? "No torque left above base frequency" : "Little torque left above base frequency",
            Explanation = $"Above {Said.Number(corner)} Hz the flux falls: at {Said.Number(highest)} Hz the motor breaks down at {Said.Torque(breakdown)} and the machine asks for {Said.Torque(load)}.",
            Remedy = "A lower maximum frequency, another gear ratio, or a motor wound for it.",
            Value = load,
            Limit = beyond ? breakdown : breakdown / Reserve,
            Unit = "N·m",
        };
    }
}
