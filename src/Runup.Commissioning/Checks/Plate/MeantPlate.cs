using Runup.Engineering;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>The plate as it was most likely meant, where a slip of the pen was found that has one correction.</summary>
internal static class MeantPlate
{
    // Of a motor's losses about a quarter is the rotor's; common practice, no source.
    private const double RotorShare = 0.25;
    private const double EfficiencyIfUnknown = 0.85;

    internal static (Nameplate? Plate, IReadOnlyList<Assumption> Corrections) Of(PlateContext context, Nameplate? printed)
    {
        if (printed is null)
        {
            return (null, []);
        }

        var corrections = new List<Assumption>();
        var plate = OfSpeed(context, printed, corrections);
        plate = OfMagnitudes(context, plate, corrections);
        return (plate, corrections);
    }

    private static Nameplate OfSpeed(PlateContext context, Nameplate plate, List<Assumption> corrections)
    {
        switch (context.Speed)
        {
            case SpeedReading.WrongFrequency when context.Likely.Clear is { } clear && clear.Meant.Frequency_Hz == context.Figures.Frequency_Hz:
                Say(corrections, "full-load speed", $"{Said.Number(clear.Meant.Speed_rpm, 4)} rpm", "plate.base-frequency");
                return plate with { Speed = ShaftSpeed.FromRpm(clear.Meant.Speed_rpm) };
            case SpeedReading.WrongFrequency wrong:
                Say(corrections, "frequency", $"{Said.Number(wrong.Other_Hz)} Hz", "plate.base-frequency");
                return plate with { Frequency = ElectricalFrequency.FromHertz(wrong.Other_Hz), PrintedPoles = PoleCount.FromPoles(wrong.PoleCount) };
            case SpeedReading.WrongPoles { Fitting: var fitting }:
                Say(corrections, "poles", $"{fitting}", "plate.poles");
                return plate with { PrintedPoles = PoleCount.FromPoles(fitting) };
            case SpeedReading.Synchronous synchronous:
                var slip = RotorShare * (1 - (plate.Efficiency?.Ratio ?? EfficiencyIfUnknown));
                var speed = plate.Frequency.SynchronousSpeed(PoleCount.FromPoles(synchronous.PoleCount)).At(Slip.FromRatio(slip));
                Say(corrections, "full-load speed (a quarter of the losses is the rotor's: common practice, no source)", $"{Said.Number(speed.Rpm, 4)} rpm", "plate.speed");
                return plate with { Speed = speed, PrintedPoles = PoleCount.FromPoles(synchronous.PoleCount) };
            case SpeedReading.Impossible { PerhapsMeant_rpm: { } rpm, PoleCount: var poles }:
                Say(corrections, "full-load speed", $"{Said.Number(rpm, 4)} rpm", "plate.speed");
                return plate with { Speed = ShaftSpeed.FromRpm(rpm), PrintedPoles = PoleCount.FromPoles(poles) };
            case SpeedReading.Impossible when context.Likely.Clear is { } clear && clear.Meant.Speed_rpm != context.Figures.Speed_rpm:
                Say(corrections, "full-load speed", $"{Said.Number(clear.Meant.Speed_rpm, 4)} rpm", "plate.speed");
                return plate with { Speed = ShaftSpeed.FromRpm(clear.Meant.Speed_rpm), PrintedPoles = PoleCount.FromPoles(clear.Meant.BuildablePoles ?? clear.Meant.PolesFromSpeed(clear.Meant.Frequency_Hz)) };
            default:
                return plate;
        }
    }

    private static Nameplate OfMagnitudes(PlateContext context, Nameplate plate, List<Assumption> corrections)
    {
        if (context.Magnitudes is MagnitudeReading.Unexplained or MagnitudeReading.Misread or MagnitudeReading.Slip { Kind: MagnitudeSlip.TenTooMuch or MagnitudeSlip.TenTooLittle })
        {
            return context.Likely.Clear is { } clear ? OfClear(context.Figures, clear.Meant, plate, corrections) : plate;
        }

        if (context.Magnitudes is not MagnitudeReading.Slip slip)
        {
            return plate;
        }

        if (slip.Kind.IsOfOutput())
        {
            var output = ShaftPower.FromWatts(plate.Output.Watts / slip.Factor);
            Say(corrections, "output", Said.Kilowatts(output.Watts), "plate.power-unit");
            return plate with { Output = output };
        }

        var ofVoltage = slip.Kind != MagnitudeSlip.ServiceFactorCurrent && !VoltageMatch.IsCredible(context);
        if (ofVoltage)
        {
            var voltage = LineVoltage.FromVolts(plate.Voltage.Volts * slip.Factor);
            Say(corrections, "voltage", $"{Said.Number(voltage.Volts)} V", "plate.voltage-connection");
            return plate with { Voltage = voltage };
        }

        var current = LineCurrent.FromAmperes(plate.Current.Amperes * slip.Factor);
        Say(corrections, "current", $"{Said.Number(current.Amperes)} A", slip.Kind switch
        {
            MagnitudeSlip.ServiceFactorCurrent => "plate.service-factor",
            MagnitudeSlip.Halved or MagnitudeSlip.Doubled => "plate.voltage-connection",
            _ => "plate.line-phase-current",
        });
        return plate with { Current = current };
    }

    /// <summary>What a single slip that outweighs all others changed.</summary>
    private static Nameplate OfClear(PlateFigures entered, PlateFigures meant, Nameplate plate, List<Assumption> corrections)
    {
        const string finding = "plate.power-balance";
        if (meant.Output_W != entered.Output_W)
        {
            Say(corrections, "output", Said.Kilowatts(meant.Output_W), finding);
            return plate with { Output = ShaftPower.FromWatts(meant.Output_W) };
        }

        if (meant.Voltage_V != entered.Voltage_V)
        {
            Say(corrections, "voltage", $"{Said.Number(meant.Voltage_V)} V", finding);
            return plate with { Voltage = LineVoltage.FromVolts(meant.Voltage_V) };
        }

        if (meant.Current_A != entered.Current_A)
        {
            Say(corrections, "current", $"{Said.Number(meant.Current_A)} A", finding);
            return plate with { Current = LineCurrent.FromAmperes(meant.Current_A) };
        }

        if (meant.PowerFactor is { } powerFactor && powerFactor != entered.PowerFactor)
        {
            Say(corrections, "power factor", Said.Number(powerFactor), finding);
            plate = plate with { PowerFactor = PowerFactor.FromRatio(powerFactor) };
        }

        if (meant.Efficiency is { } efficiency && efficiency != entered.Efficiency)
        {
            Say(corrections, "efficiency", Said.Percent(efficiency), finding);
            plate = plate with { Efficiency = Efficiency.FromRatio(efficiency) };
        }

        return plate;
    }

    private static void Say(List<Assumption> corrections, string what, string value, string finding) =>
        corrections.Add(new($"{what} of the plate as it was most likely meant, for the checks of drive and machine", value, $"finding {finding}", false));
}
