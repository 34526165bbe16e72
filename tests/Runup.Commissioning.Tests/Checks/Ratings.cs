using Runup.Engineering.Drives;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>Sizes of an invented make: normal and heavy current, bus capacitance, lowest braking resistance.</summary>
internal static class Ratings
{
    private static readonly (double kW, double Normal, double Heavy, double MicroFarads, double LowestOhms)[] Sizes =
    [
        (0.75, 2.4, 1.9, 75, 200), (1.5, 4.1, 3.3, 130, 150), (2.2, 5.6, 4.4, 190, 100), (4, 9.5, 7.7, 320, 60), (5.5, 12.6, 10.3, 420, 50), (7.5, 17, 13.6, 540, 40),
        (11, 25, 20, 780, 27), (15, 32, 25, 1050, 20), (22, 45, 37, 1500, 15), (30, 61, 48, 2000, 10), (45, 90, 73, 3000, 7), (75, 145, 115, 5000, 4.5),
        (132, 260, 205, 9000, 2.5), (200, 390, 310, 13000, 1.6),
    ];

    internal static DriveRating Of(double kW)
    {
        var size = Sizes.Single(s => s.kW == kW);
        return Rating(size.kW, size.Normal, size.Heavy, size.MicroFarads, size.LowestOhms, (380, 480), 3);
    }

    /// <summary>The smallest size with at least so much normal current.</summary>
    internal static DriveRating For(double amperes) => Of(Sizes.First(s => s.Normal >= amperes).kW);

    internal static DriveRating Rating(double kW, double normal, double heavy, double microFarads, double lowestOhms, (double Low, double High) supply, int phases)
    {
        var level = supply.Low < 300 ? 0.5 : 1;
        return new DriveRating
        {
            NominalPower = ShaftPower.FromWatts(kW * 1000),
            SupplyVoltage = (LineVoltage.FromVolts(supply.Low), LineVoltage.FromVolts(supply.High)),
            SupplyPhases = phases,
            Overloads =
            [
                new("normal", LineCurrent.FromAmperes(normal), Fraction.FromPercent(110), Duration.FromSeconds(60), Duration.FromSeconds(600)),
                new("heavy", LineCurrent.FromAmperes(heavy), Fraction.FromPercent(150), Duration.FromSeconds(60), Duration.FromSeconds(600)),
            ],
            PeakCurrent = LineCurrent.FromAmperes(1.8 * heavy),
            PeakTime = Duration.FromSeconds(2),
            OvercurrentTrip = LineCurrent.FromAmperes(2.2 * heavy),
            BusCapacitance = Capacitance.FromFarads(microFarads * 1e-6),
            DcChoke = Fraction.FromPercent(kW >= 7.5 ? 4 : 0),
            LowestBrakingResistance = Resistance.FromOhms(lowestOhms),
            OvervoltageTrip = DcVoltage.FromVolts(820 * level),
            OvervoltageControl = DcVoltage.FromVolts(780 * level),
            ChopperLevel = DcVoltage.FromVolts(760 * level),
            UndervoltageTrip = DcVoltage.FromVolts(380 * level),
            OutputRiseTime = Duration.FromSeconds(0.1e-6),
            SwitchingDerating =
            [
                (SwitchingFrequency.FromHertz(4000), Fraction.FromPercent(100)),
                (SwitchingFrequency.FromHertz(8000), Fraction.FromPercent(85)),
                (SwitchingFrequency.FromHertz(12000), Fraction.FromPercent(70)),
            ],
            AmbientDerating = new(Temperature.FromCelsius(40), 0.015, Temperature.FromCelsius(50)),
            AltitudeDerating = new(Length.FromMetres(1000), 0.01 / 100, Length.FromMetres(4000)),
        };
    }
}
