namespace Runup.Engineering.Motors;

/// <summary>The circuit that has a rated point exactly, for given losses and leakages.</summary>
/// <remarks>
/// With V the phase voltage and I the stator current at the rated point: Rs = P_cu/(3 I²); E = V − I (Rs + jXls); Rfe = 3 E²/P_core;
/// a = P_airgap/(3 E) the active rotor current; b from Xlr (a² + b²) = E b, the smaller root, which lies on the stable side;
/// Rr = s E a/(a² + b²); Xm = E/(I_b − b), where I_b is the part of I that lags E by a quarter turn.
/// </remarks>
internal static class RatedPointCircuit
{
    private const double SmallestMagnetizingCurrent = 1e-9;

    /// <summary>False where no circuit has that point on its stable side.</summary>
    internal static bool TrySolve(in RatedPoint point, in LossShares losses, double statorLeakage_ohm, double rotorLeakage_ohm, out CircuitValues values)
    {
        values = default;
        var (v, i) = (point.Phase_V, point.Current_A);
        var sin = Math.Sqrt(1 - (point.PowerFactor * point.PowerFactor));
        var (active, reactive) = (i * point.PowerFactor, -i * sin);
        var rs = losses.StatorCopper_W / (3 * i * i);
        var (eRe, eIm) = (v - (active * rs) + (reactive * statorLeakage_ohm), -(reactive * rs) - (active * statorLeakage_ohm));
        var e = double.Hypot(eRe, eIm);
        var lagging = ((active * eIm) - (reactive * eRe)) / e;

        var a = losses.AirGap_W / (3 * e);
        var discriminant = (e * e) - (4 * rotorLeakage_ohm * rotorLeakage_ohm * a * a);
        if (!(discriminant >= 0) || !(eRe > 0) || !(rs >= 0) || !(losses.Core_W >= 0))
        {
            return false;
        }

        var b = 2 * rotorLeakage_ohm * a * a / (e + Math.Sqrt(discriminant));
        var magnetizing_A = lagging - b;
        var rr = point.Slip * e * a / ((a * a) + (b * b));
        if (!(magnetizing_A > SmallestMagnetizingCurrent * i) || !(rr > 0) || !double.IsFinite(rr) || !double.IsFinite(e / magnetizing_A))
        {
            return false;
        }

        values = new CircuitValues
        {
            Stator_ohm = rs,
            StatorLeakage_ohm = statorLeakage_ohm,
            Magnetizing_ohm = e / magnetizing_A,
            CoreLoss_siemens = losses.Core_W / (3 * e * e),
            RotorLeakage_ohm = rotorLeakage_ohm,
            Rotor_ohm = rr,
            Friction_W = losses.Friction_W,
            StrayPerSquareAmpere_W = losses.Stray_W / (i * i),
            ReferenceSpeed_radPerS = point.SynchronousSpeed_radPerS * (1 - point.Slip),
            RatedFrequency_Hz = point.Frequency_Hz,
            PolePairs = point.PolePairs,
            Iron = new MagnetizingCurve(0, e),
        };
        return true;
    }
}
