using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;
using Runup.Engineering;

namespace Runup.Dynamics.Plant;

/// <summary>How a diode rectifier feeds the DC bus.</summary>
internal enum RectifierMode
{
    /// <summary>No supply.</summary>
    Open,

    /// <summary>Through the charging resistor.</summary>
    Charging,

    /// <summary>Directly.</summary>
    Conducting,
}

/// <summary>Diode rectifier as a source characteristic: mean current into the DC bus against the bus voltage; never backward.</summary>
/// <remarks>
/// <para>
/// With V̂ the peak of the line voltage, x = v/V̂, ω the supply's angular frequency, L = L_dc + 2·L_ac (six pulses; two pulses likewise) and
/// p the pulses in a period: current flows in separate pulses while x lies above x_b = (p/π)·sin(π/p), and its mean is
/// i = V̂/(ωL)·g(u), u = (1 − x)/(1 − x_b), where g follows from integrating L·di/dt = v_rectified − v over a pulse. g is given here as
/// k·u²·(1 + a·u + b·u¹⁶), within 0.5 % of that integral. Below x_b the current is continuous and the commutation of the AC side makes
/// the voltage fall by R_c for each ampere, 3/π·ω·L_ac with six pulses and 4/π·ω·L_ac with two: i = i_b + (x_b·V̂ − v)/R_c.
/// </para>
/// <para>
/// Assumes a bus voltage without ripple within a pulse, equal phases, ideal diodes. The swing of choke and capacitor against each other is
/// left out: the bus follows the characteristic without the choke's delay.
/// </para>
/// </remarks>
[Source("mohan", "chapter 5, three-phase rectifiers: average voltage, commutation, discontinuous conduction (from memory)")]
internal readonly struct Rectifier
{
    // Current must not answer the bus voltage faster than this, so that steps of 1/16 ms stay stable; 1/s.
    private const double FastestRate = 24_000;
    private const double ChargingTimeS = 0.1;

    private readonly double peakV;
    private readonly double perPeakV;
    private readonly int pulsesInPeriod;
    private readonly double perWindow;
    private readonly double pulseA;
    private readonly double k;
    private readonly double a;
    private readonly double b;
    private readonly double pulsesA;
    private readonly double perPeakWindowV;
    private readonly double boundaryV;
    private readonly double slopeS;
    private readonly double perCommutationOhm;
    private readonly double perChargingOhm;

    private Rectifier(double peakV, int pulses, double totalOhm, double commutationOhm, double busF)
    {
        (k, a, b) = pulses == 6 ? (0.008729, 0.0092, 0.02662) : (0.1895, 0.0760, 0.03489);
        this.peakV = peakV;
        perPeakV = 1 / peakV;
        pulsesInPeriod = pulses;
        BoundaryRatio = pulses / Math.PI * Math.Sin(Math.PI / pulses);
        perWindow = 1 / (1 - BoundaryRatio);
        pulseA = peakV / totalOhm;
        pulsesA = pulseA * k;
        perPeakWindowV = perWindow * perPeakV;
        boundaryV = BoundaryRatio * peakV;
        slopeS = pulsesA * perPeakWindowV;
        var slowestOhm = 1 / (FastestRate * busF);
        perCommutationOhm = 1 / Math.Max(commutationOhm, slowestOhm);
        perChargingOhm = busF / ChargingTimeS;
        Mode = RectifierMode.Conducting;
    }

    private Rectifier(Rectifier other, RectifierMode mode)
    {
        this = other;
        Mode = mode;
    }

    internal RectifierMode Mode { get; }

    /// <summary>Peak of the line voltage, to which the idle bus is charged, in V.</summary>
    internal double PeakV => peakV;

    /// <summary>Bus voltage over the peak at which the current becomes continuous.</summary>
    internal double BoundaryRatio { get; }

    /// <summary>Mean current at that boundary, in A.</summary>
    internal double BoundaryA => pulseA * k * (1 + a + b);

    /// <summary>Steepest answer of the current to the bus voltage, in 1/Ω.</summary>
    internal double SteepestPerOhm => Math.Max(perCommutationOhm, pulseA * k * (2 + (3 * a) + (18 * b)) * perWindow * perPeakV);

    internal static Rectifier SixPulse(double lineV, double chokeOhm, double supplyOhm, double busF) =>
        new(Math.Sqrt(2) * lineV, 6, chokeOhm + (2 * supplyOhm), 3 / Math.PI * supplyOhm, busF);

    internal static Rectifier TwoPulse(double lineV, double chokeOhm, double supplyOhm, double busF) =>
        new(Math.Sqrt(2) * lineV, 2, chokeOhm + (2 * supplyOhm), 4 / Math.PI * supplyOhm, busF);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Rectifier In(RectifierMode mode) => new(this, mode);

    /// <summary>Bus voltage at which the rectifier gives a power, in V; the idle bus where none is drawn.</summary>
    internal double VoltageAt(double powerW)
    {
        double low = 0.6 * peakV, high = peakV;
        for (var i = 0; i < 60; i++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = CurrentA(middle) * middle > powerW ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>Ripple of the bus, peak to peak, in V for each ampere of the mean current: so much of what that would discharge between two pulses.</summary>
    /// <remarks>A share of 0.25 of six pulses and 0.7 of two, by ngspice from 1 to 5 % source reactance (data/cases/dynamics): an estimate within a factor of two.</remarks>
    internal double RippleOhm(double busF, double supplyHz) =>
        Mode == RectifierMode.Conducting ? (pulsesInPeriod == 6 ? 0.25 : 0.7) / (pulsesInPeriod * supplyHz * busF) : 0;

    /// <summary>Mean current into the bus, in A.</summary>
    internal double CurrentA(double busV) => CurrentA<One>(busV);

    /// <summary>Mean current into the bus, in A.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T CurrentA<T>(T busV)
        where T : struct, ILanes<T> => Mode switch
        {
            RectifierMode.Open => default,
            RectifierMode.Charging => T.Max(perChargingOhm * (T.Of(peakV) - busV), default),
            _ => ConductingA(busV),
        };

    /// <summary>How much the current falls for each volt that the bus rises, in 1/Ω.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T FallPerV<T>(T busV)
        where T : struct, ILanes<T>
    {
        if (Mode == RectifierMode.Open)
        {
            return default;
        }

        var below = perPeakV * T.Max(T.Of(peakV) - busV, default);
        if (Mode == RectifierMode.Charging)
        {
            return T.Choose(T.Less(default, below), T.Of(perChargingOhm), default);
        }

        var u = perWindow * below;
        var u2 = u * u;
        var u4 = u2 * u2;
        var u8 = u4 * u4;
        var pulses = slopeS * u * T.MultiplyAdd(T.Of(18 * b), u8 * u8, T.MultiplyAdd(T.Of(3 * a), u, T.Of(2)));
        return T.Choose(T.Less(T.Of(1), u), T.Of(perCommutationOhm), pulses);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private T ConductingA<T>(T busV)
        where T : struct, ILanes<T>
    {
        // The bus waits for this in each stage of a step: as few operations as can be stand one behind the other. Beyond the boundary the pulses stay what they are there.
        var u = LaneSet.Clamp(T.MultiplySubtractFrom(T.Of(perPeakWindowV), busV, T.Of(perWindow)), default, T.Of(1));
        var u2 = u * u;
        var u4 = u2 * u2;
        var u8 = u4 * u4;
        var pulses = T.MultiplyAdd(T.Of(b), u8 * u8, T.MultiplyAdd(T.Of(a), u, T.Of(1)));
        var beyond = perCommutationOhm * T.Max(T.Of(boundaryV) - busV, default);
        return T.MultiplyAdd(pulsesA * u2, pulses, beyond);
    }
}
