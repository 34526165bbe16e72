using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>The plate as the calculations take it.</summary>
internal static class NameplateReading
{
    /// <summary>The plate as printed; null where its figures are not those of something that turns.</summary>
    internal static Nameplate? Of(PlateContext context)
    {
        var plate = context.Plate;
        return !context.Figures.AreUsable ? null : new Nameplate
        {
            Output = plate.Output.Value,
            Voltage = plate.Voltage.Value,
            Current = plate.Current.Value,
            Frequency = plate.Frequency.Value,
            Speed = plate.Speed.Value,
            PrintedPoles = PoleCount.FromPoles(context.Figures.BuildablePoles ?? context.Figures.PolesFromSpeed(context.Figures.Frequency_Hz)),
            PowerFactor = plate.PowerFactor?.Value is { Ratio: > 0 and <= 1 } powerFactor ? powerFactor : null,
            Efficiency = plate.Efficiency?.Value is { Ratio: > 0 and < 1 } efficiency ? efficiency : null,
            EfficiencyClass = plate.EfficiencyClass?.Value,
            LockedRotorCurrentRatio = plate.LockedRotorCurrent?.Value.Value,
            CodeLetter = plate.CodeLetter?.Value is { Length: 1 } letter ? char.ToUpperInvariant(letter[0]) : null,
            DesignLetter = plate.DesignLetter?.Value,
            LockedRotorTorqueRatio = plate.LockedRotorTorque?.Value.Value,
            BreakdownTorqueRatio = plate.BreakdownTorque?.Value.Value,
            Rounding = new PlateRounding
            {
                OutputWatts = plate.Output.RoundingSi,
                VoltageVolts = plate.Voltage.RoundingSi,
                CurrentAmperes = plate.Current.RoundingSi,
                SpeedRadiansPerSecond = plate.Speed.RoundingSi,
                PowerFactor = plate.PowerFactor?.RoundingSi ?? 0,
                Efficiency = plate.Efficiency?.RoundingSi ?? 0,
            },
        };
    }
}
