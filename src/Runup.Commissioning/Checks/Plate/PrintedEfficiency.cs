using Runup.Engineering.Standards;
using Runup.Quantities;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>An efficiency that cannot be, that is not that of its class, or that stands in the wrong field.</summary>
internal sealed class PrintedEfficiency() : PlateCheck("plate.efficiency")
{
    private const double MarginBelow = 0.02;
    private const double MarginAbove = 0.01;

    // The tolerance of IEC 60034-1 on (1 − η), from memory, is for measured values: the plate prints the nominal one. Half a point more for rounding.
    private const double ClassTolerance = 0.15;
    private const double ClassRounding = 0.005;

    /// <inheritdoc/>
    public override CheckResult Judge(PlateContext context)
    {
        if (context.Figures.Efficiency is not { } efficiency)
        {
            return Unknown("efficiency (motor.plate.efficiency)", "losses, and what deceleration they allow");
        }

        if (efficiency is <= 0 or >= 1)
        {
            return new CheckResult.Violated(Id, Severity.Blocker, Blocks, new Basis.Physics("0 < η < 1"))
            {
                Title = "No efficiency",
                Explanation = $"An efficiency of {Said.Percent(efficiency)} cannot be.",
                Remedy = "Enter the efficiency from the plate with its per cent sign.",
                Value = efficiency * 100,
                Limit = 100,
                Unit = "%",
            };
        }

        if (!context.IsInduction || !context.Figures.AreUsable)
        {
            return NotAnInductionPlate(context);
        }

        return Unusual(context, efficiency) ?? BelowItsClass(context, efficiency) ?? Fine($"{Said.Percent(efficiency)} for {Said.Kilowatts(context.Figures.Output_W)}");
    }

    /// <summary>Whether power factor and efficiency are each usual in the other's place, and not in their own; their product is the same either way, so it must fit.</summary>
    internal static bool IsSwappedWithPowerFactor(PlateContext context)
    {
        var figures = context.Figures;
        if (figures is not { PowerFactor: { } powerFactor, Efficiency: { } efficiency } || context.Magnitudes is not MagnitudeReading.Agree)
        {
            return false;
        }

        var poles = context.Speed.Poles ?? 4;
        var (lowPowerFactor, highPowerFactor) = UsualMotors.PowerFactor(figures.Output_W, poles);
        var (lowEfficiency, highEfficiency) = UsualMotors.Efficiency(figures.Output_W, poles, context.Speed.FullLoadSlip);
        return (powerFactor > highPowerFactor || efficiency < lowEfficiency)
            && efficiency >= lowPowerFactor && efficiency <= highPowerFactor + 0.01 && powerFactor >= lowEfficiency - 0.01 && powerFactor <= highEfficiency;
    }

    private CheckResult.Violated? Unusual(PlateContext context, double efficiency)
    {
        var output = context.Figures.Output_W;
        var (low, high) = UsualMotors.Efficiency(output, context.Speed.Poles ?? 4, context.Speed.FullLoadSlip);
        var usual = efficiency >= low - MarginBelow && efficiency <= high + MarginAbove && !IsSwappedWithPowerFactor(context);
        var misread = context.Magnitudes is MagnitudeReading.Misread { PowerFactor: false };
        if (!misread && (usual || context.Magnitudes is MagnitudeReading.Slip or MagnitudeReading.Misread))
        {
            return null;
        }

        var swapped = IsSwappedWithPowerFactor(context);
        return new(Id, Severity.Caution, Blocks, new Basis.CommonPractice($"η of {Said.Kilowatts(output)} lies between {Said.Percent(low)} and {Said.Percent(high)}, from 1.15 times the losses of class IE1 to 0.8 times those of IE4"))
        {
            Title = swapped ? "Power factor and efficiency interchanged" : "Unusual efficiency",
            Explanation = swapped
                ? $"An efficiency of {Said.Percent(efficiency)} with a power factor of {Said.Number(context.Figures.PowerFactor!.Value)} is usual only the other way round.{context.Likely.Sentence}"
                : $"An efficiency of {Said.Percent(efficiency)} is unusual for a motor of {Said.Kilowatts(output)}.{(misread ? string.Empty : context.Likely.Sentence)}",
            Remedy = swapped ? "Exchange motor.plate.power-factor and motor.plate.efficiency." : "Read it again: the power factor, or the efficiency at part load, may stand in its place.",
            Value = efficiency * 100,
            Limit = (efficiency < low ? low : high) * 100,
            Unit = "%",
        };
    }

    private CheckResult.Violated? BelowItsClass(PlateContext context, double efficiency)
    {
        if (context.Plate.EfficiencyClass?.Value is not { } className || context.Speed.Poles is not { } poles || poles > 8 || context.Magnitudes is MagnitudeReading.Slip)
        {
            return null;
        }

        var nominal = EfficiencyClass.Nominal(
            className, ShaftPower.FromWatts(context.Figures.Output_W), PoleCount.FromPoles(poles), ElectricalFrequency.FromHertz(Math.Round(context.Figures.Frequency_Hz)));
        if (nominal is null || efficiency >= nominal.Value.Ratio - (ClassTolerance * (1 - nominal.Value.Ratio)) - ClassRounding)
        {
            return null;
        }

        var interchanged = context.Figures.PowerFactor is { } powerFactor && Math.Abs(powerFactor - nominal.Value.Ratio) < ClassRounding;
        return new(Id, Severity.Note, Blocks, new Basis.Standard($"{nominal.Source}, class {className}", nominal.FromMemory))
        {
            Title = interchanged ? "Power factor and efficiency interchanged" : "Efficiency below its class",
            Explanation = $"{Said.Percent(efficiency)} is below the {Said.Percent(nominal.Value.Ratio)} of class {className} for this output and speed: {(interchanged ? $"that is what stands as power factor, {Said.Number(context.Figures.PowerFactor!.Value)}, so the two were probably interchanged" : "one of the two was misread")}.",
            Remedy = interchanged ? "Look at the plate, and exchange motor.plate.power-factor and motor.plate.efficiency." : "Read efficiency, class, output and speed again.",
            Value = efficiency * 100,
            Limit = nominal.Value.Ratio * 100,
            Unit = "%",
        };
    }
}
