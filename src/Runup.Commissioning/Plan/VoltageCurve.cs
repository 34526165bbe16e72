using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Engineering.Drives;
using Runup.Engineering.Mechanics;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>Voltage against frequency: its corner, its shape, its value at standstill.</summary>
internal static class VoltageCurve
{
    private const string Flux = "flux ∝ U/f";
    private const double HighestBoost = 0.15;

    // The square curve only where it could keep a ramp twice as steep: with little flux a motor forgives little.
    private const double InHand = 2;

    // Of the motors that the plate may stand for; the reckoning counts one that loses its grip for a moment as lost.
    private const double MostMotors = 0.9;

    internal static void Plan(PlanBuilder plan, JobContext context)
    {
        var output = context.Output;
        Method(plan, context);
        plan.Number(Setting.BaseFrequency, output.BaseFrequency.Hertz, Rank.Must, output.Reason, Flux);
        plan.Number(Setting.MaximumOutputVoltage, output.MaximumVoltage.Volts, Rank.Must, output.Reason, Flux);
        var (quadratic, share) = QuadraticBoost(context);
        Shape(plan, context, quadratic, share);
        if ((quadratic ?? context.Printed.Boost) is { } boost)
        {
            plan.Number(
                Setting.TorqueBoost,
                Math.Min(boost.Boost.Ratio, HighestBoost),
                context.Printed.BreakawayAtMotor is null ? Rank.Should : Rank.Must,
                boost.Reason,
                "motor's circuit: U = √3·|E + I·(Rs + jXls)| at standstill",
                Math.Min(boost.Boost.Ratio, HighestBoost),
                Math.Max(boost.Boost.Ratio, boost.Highest.Ratio));
        }

        if (context.Plate.IsSynchronous)
        {
            return;
        }

        plan.Number(Setting.SlipCompensation, 0, Rank.May, "off for the first run, so that speed and current can be held against the prediction; a machine that needs its speed held may have up to 100 % afterwards", PlanBuilder.Practice, 0, 1);
    }

    private static void Method(PlanBuilder plan, JobContext context)
    {
        if (context.Plate.IsSynchronous && context.MotorCount == 1)
        {
            plan.Choice(
                Setting.ControlMethod,
                "sensorless-vector",
                Rank.Must,
                "a motor without slip falls out of step under V/f; the drive's manual must say that its vector control is for this kind of motor",
                PlanBuilder.Practice);
            return;
        }

        plan.Choice(
            Setting.ControlMethod,
            "vf",
            Rank.Should,
            context switch
            {
                { MotorCount: > 1 } => "several motors on one drive: no vector control",
                { Job.Machine.Load.Value: LoadKind.Hoisting } => "the predictions reckon with V/f; a hoist holds its load better at low speed under vector control, which needs an identification run without the load first",
                _ => "V/f does for this load, needs no identification run, and is what the predictions reckon with",
            },
            PlanBuilder.Practice);
    }

    private static void Shape(PlanBuilder plan, JobContext context, BoostChoice? quadratic, Fraction? share)
    {
        var load = context.Job.Machine.Load.Value;
        if (context.Plate.IsSynchronous)
        {
            plan.Choice(Setting.VfCharacteristic, "linear", Rank.May, "the straight line; vector control does without it", PlanBuilder.Practice);
        }
        else if (quadratic is not null)
        {
            plan.Choice(Setting.VfCharacteristic, "quadratic", Rank.Should, "pump or fan: torque falls with the square of speed, and less flux at part speed saves iron loss and noise; even a ramp twice as steep is kept", "T ∝ n², flux ∝ U/f");
        }
        else
        {
            plan.Choice(
                Setting.VfCharacteristic,
                "linear",
                load == LoadKind.Quadratic ? Rank.Should : Rank.Must,
                (load, share) switch
                {
                    (LoadKind.Quadratic, { } few) => $"a pump or fan could do with the square curve, and the motor that fits the plate best would; but of the motors that the plate may stand for no more than {Said.Number(few.Percent, 2)} of 100 follow the ramp on it, whatever the boost",
                    (LoadKind.Quadratic, _) => "a pump or fan could do with the square curve, but the ramp asked for needs the torque of full flux",
                    _ => "this load needs full flux at every speed",
                },
                Flux);
        }
    }

    /// <summary>The boost for the square curve, where load, ramp and breakaway allow it; null where the straight one is to be had.</summary>
    private static (BoostChoice? Boost, Fraction? Share) QuadraticBoost(JobContext context)
    {
        if (context.Job.Machine.Load.Value != LoadKind.Quadratic || context.Printed is not { Motion: { InertiaIsKnown: true } motion, Nameplate: { } plate, Circuit: { } circuit }
            || context.Job.Operation.Acceleration?.Value is not { Seconds: > 0 } asked || context.Output.BaseFrequency.Hertz < motion.MaximumFrequency.Hertz * 0.99)
        {
            return (null, null);
        }

        var curve = context.Output.Characteristic(VoltageShape.Quadratic, default, plate.Voltage);
        var (motors, limit) = (context.Printed.Known?.Now, context.Printed.BearableAtRest);
        var boost = BoostChoice.For(circuit, curve, plate.Current, context.Printed.BreakawayAtMotor, null, limit);
        var onCurve = motion.Motor with { Characteristic = curve with { Boost = boost.Boost } };
        if (!boost.IsEnough || boost.Boost.Ratio > HighestBoost
            || Acceleration.Of(motion.Machine, onCurve, motion.MaximumFrequency) is not Acceleration.Reached reached || InHand * reached.ShortestRamp.Seconds > asked.Seconds)
        {
            return (null, null);
        }

        if (motors is null)
        {
            return (boost, null);
        }

        var (choice, share) = BoostForMost.Of(
            boost, motors, added => RunUpShare.Of(motors, curve with { Boost = added }, motion.Machine, motion.MaximumFrequency, asked, limit), "break away and follow the ramp", limit);
        return share.Ratio >= MostMotors ? (choice, null) : (null, share);
    }
}
