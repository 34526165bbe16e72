using Runup.Quantities;

namespace Runup.Engineering.Braking;

/// <summary>What the capacitors of a DC bus can take.</summary>
public static class BusCapacitor
{
    /// <summary>Energy that raises the bus from a voltage to another: C (U₂² − U₁²)/2, C capacitance (F), U voltage (V).</summary>
    [Source("common-practice", "energy of a capacitor")]
    public static Energy EnergyBetween(Capacitance capacitance, DcVoltage low, DcVoltage high) =>
        Energy.FromJoules(capacitance.Farads * ((high.Volts * high.Volts) - (low.Volts * low.Volts)) / 2);

    /// <summary>Bus voltage of a six-pulse rectifier without load: the peak of the line voltage, √2 U.</summary>
    [Source("common-practice", "no-load voltage of a six-pulse rectifier")]
    public static DcVoltage NoLoadVoltage(LineVoltage supply) => DcVoltage.FromVolts(Math.Sqrt(2) * supply.Volts);
}
