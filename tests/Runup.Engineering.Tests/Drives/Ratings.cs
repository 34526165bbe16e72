using Runup.Engineering.Drives;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Drives;

/// <summary>An invented drive size for tests.</summary>
internal static class Ratings
{
    internal static DriveRating SevenAndAHalf { get; } = new()
    {
        NominalPower = ShaftPower.FromWatts(7500),
        SupplyVoltage = (LineVoltage.FromVolts(380), LineVoltage.FromVolts(480)),
        SupplyPhases = 3,
        Overloads =
        [
            new OverloadCycle("normal", LineCurrent.FromAmperes(17), Fraction.FromPercent(110), Duration.FromSeconds(60), Duration.FromSeconds(600)),
            new OverloadCycle("heavy", LineCurrent.FromAmperes(13.6), Fraction.FromPercent(150), Duration.FromSeconds(60), Duration.FromSeconds(600)),
        ],
        PeakCurrent = LineCurrent.FromAmperes(24.5),
        PeakTime = Duration.FromSeconds(2),
        OvercurrentTrip = LineCurrent.FromAmperes(29.9),
        BusCapacitance = Capacitance.FromFarads(540e-6),
        DcChoke = Fraction.FromPercent(4),
        LowestBrakingResistance = Resistance.FromOhms(40),
        OvervoltageTrip = DcVoltage.FromVolts(820),
        OvervoltageControl = DcVoltage.FromVolts(780),
        ChopperLevel = DcVoltage.FromVolts(760),
        UndervoltageTrip = DcVoltage.FromVolts(380),
        SwitchingDerating =
        [
            (SwitchingFrequency.FromHertz(4000), Fraction.FromPercent(100)),
            (SwitchingFrequency.FromHertz(8000), Fraction.FromPercent(85)),
            (SwitchingFrequency.FromHertz(12000), Fraction.FromPercent(70)),
        ],
        AmbientDerating = new LinearDerating<Temperature>(Temperature.FromCelsius(40), 0.015, Temperature.FromCelsius(50)),
        AltitudeDerating = new LinearDerating<Length>(Length.FromMetres(1000), 0.0001, Length.FromMetres(4000)),
    };
}
