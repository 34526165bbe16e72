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
            default:
                return plate;
        }
    }

    private static Nameplate OfMagnitudes(PlateContext context, Nameplate plate, List<Assumption> corrections)
    {
        if (context.Magnitudes is not MagnitudeReading.Slip slip || slip.Kind is MagnitudeSlip.TenTooMuch or MagnitudeSlip.TenTooLittle)
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

    private static void Say(List<Assumption> corrections, string what, string value, string finding) =>
        corrections.Add(new($"{what} of the plate as it was most likely meant, for the checks of drive and machine", value, $"finding {finding}", false));
}
