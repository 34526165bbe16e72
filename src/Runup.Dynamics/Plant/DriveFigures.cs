namespace Runup.Dynamics.Plant;

/// <summary>Figures of supply, rectifier, bus, chopper and the drive's own losses, from the system's description.</summary>
/// <remarks>
/// Own losses: 0.3 % of the nominal power for the drive's own supply, as a conductance on the bus, and 1.5 % of it at the normal continuous
/// current, in proportion to the current (common practice, no source). Where the supply's reactance is not given, 1 % of the drive's base
/// impedance. The chopper switches off 2 % below its level.
/// </remarks>
internal sealed class DriveFigures
{
    private const double OwnSupplyShare = 0.003;
    private const double InverterLossShare = 0.015;
    private const double UnstatedSupplyShare = 0.01;
    private const double ChopperHysteresis = 0.02;
    private const double MostRateInStep = 1.6;

    // A small bus on a stiff supply settles within microseconds; the few ticks that go by short steps may have as many as that takes.
    private const int MostSteps = 512;
    private const double MostMachineRateInLongStep = 0.6;

    internal DriveFigures(DriveSystem system)
    {
        var drive = system.Drive;
        var nominalA = drive.Overloads[0].Current.Amperes;
        var lineV = system.SupplyVoltage.Volts;
        BusF = drive.BusCapacitance.Farads;
        var baseOhm = lineV / (Math.Sqrt(3) * nominalA);
        var chokeOhm = drive.DcChoke.Ratio * baseOhm;
        var supplyOhm = system.SupplyReactance?.Ohms ?? (UnstatedSupplyShare * baseOhm);
        Rectifier = drive.SupplyPhases == 3
            ? Rectifier.SixPulse(lineV, chokeOhm, supplyOhm, BusF)
            : Rectifier.TwoPulse(lineV, chokeOhm, supplyOhm, BusF);
        TwoPhaseRectifier = Rectifier.TwoPulse(lineV, chokeOhm, supplyOhm, BusF);
        SupplyHz = system.SupplyFrequency.Hertz;
        OwnConductance = OwnSupplyShare * drive.NominalPower.Watts / (Rectifier.PeakV * Rectifier.PeakV);
        InverterLossWPerA = InverterLossShare * drive.NominalPower.Watts / nominalA;
        ChopperOnV = drive.ChopperLevel.Volts;
        ChopperOffV = ChopperOnV * (1 - ChopperHysteresis);
        ResistorConductance = system.BrakingResistor is { } resistor ? 1 / resistor.Ohms : 0;
    }

    internal double BusF { get; }

    internal Rectifier Rectifier { get; }

    /// <summary>What is left of the rectifier with one phase missing.</summary>
    internal Rectifier TwoPhaseRectifier { get; }

    internal double SupplyHz { get; }

    internal double OwnConductance { get; }

    internal double InverterLossWPerA { get; }

    internal double ChopperOnV { get; }

    internal double ChopperOffV { get; }

    internal double ResistorConductance { get; }

    /// <summary>Long steps into which a tick is divided, whose length the motor and the shaft alone set.</summary>
    internal static int LongStepsIn(double tickS, double fastestMachineRate, double swingRate) =>
        Math.Clamp((int)Math.Ceiling(tickS * Math.Max(fastestMachineRate, swingRate) / MostMachineRateInLongStep), 1, 16);

    /// <summary>Steps into which a tick is divided: enough that a Runge-Kutta step is stable and accurate at the fastest rate of the plant.</summary>
    internal int StepsIn(double tickS, double fastestMachineRate, double swingRate)
    {
        var busRate = Rectifier.SteepestPerOhm / BusF;
        var rate = Math.Max(busRate / MostRateInStep, Math.Max(fastestMachineRate, swingRate) / (0.5 * MostRateInStep));
        return Math.Clamp((int)Math.Ceiling(tickS * rate), 2, MostSteps);
    }
}
