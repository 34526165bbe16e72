using System.Globalization;
using Runup.Quantities;

namespace Runup.Engineering.Drives;

/// <summary>The continuous output current that a drive has left at its switching frequency, ambient temperature and altitude.</summary>
/// <remarks>
/// <para>
/// I = I_cycle · k_f · k_T · k_h: I_cycle (A) the continuous current of the overload cycle; k_f from the size's table, linear between its points; k_T = 1 − a (T − T₀) above T₀;
/// k_h = 1 − c (h − h₀) above h₀. a (1/K), c (1/m), T₀ and h₀ are the maker's.
/// </para>
/// <para>Validity: up to the highest switching frequency, temperature and altitude that the maker permits.</para>
/// <para>Assumption: the three factors multiply, where the maker does not say otherwise.</para>
/// </remarks>
[Source("common-practice", "derating factors multiply; figures are the maker's")]
public abstract record DeratedCurrent
{
    private DeratedCurrent()
    {
    }

    /// <summary>The drive may run so.</summary>
    /// <param name="Current">Continuous output current.</param>
    /// <param name="Switching">Factor for switching frequency.</param>
    /// <param name="Ambient">Factor for ambient temperature.</param>
    /// <param name="Altitude">Factor for altitude.</param>
    public sealed record Permitted(LineCurrent Current, Fraction Switching, Fraction Ambient, Fraction Altitude) : DeratedCurrent
    {
        /// <summary>What is left over a motor's current: I / I_motor − 1; negative if it is not enough.</summary>
        public Fraction MarginOver(LineCurrent motor) => Fraction.FromRatio((Current.Amperes / motor.Amperes) - 1);
    }

    /// <summary>The maker does not permit it.</summary>
    /// <param name="Reasons">Which limit is passed, at least one.</param>
    public sealed record NotPermitted(IReadOnlyList<string> Reasons) : DeratedCurrent;

    /// <summary>The continuous current of a size.</summary>
    public static DeratedCurrent Of(DriveRating drive, OverloadCycle cycle, SwitchingFrequency switching, Temperature ambient, Length altitude)
    {
        var reasons = new List<string>();
        var switchingFactor = SwitchingFactor(drive, switching, reasons);
        var ambientFactor = Linear(ambient.Kelvin, drive.AmbientDerating.FullUpTo.Kelvin, drive.AmbientDerating.LossPerSi);
        var altitudeFactor = Linear(altitude.Metres, drive.AltitudeDerating.FullUpTo.Metres, drive.AltitudeDerating.LossPerSi);
        if (ambient.Kelvin > drive.AmbientDerating.Highest.Kelvin)
        {
            reasons.Add(Text($"ambient {ambient.Celsius:G4} °C is above the highest permitted, {drive.AmbientDerating.Highest.Celsius:G4} °C"));
        }

        if (altitude.Metres > drive.AltitudeDerating.Highest.Metres)
        {
            reasons.Add(Text($"altitude {altitude.Metres:G4} m is above the highest permitted, {drive.AltitudeDerating.Highest.Metres:G4} m"));
        }

        return reasons.Count > 0
            ? new NotPermitted(reasons)
            : new Permitted(
                LineCurrent.FromAmperes(cycle.Current.Amperes * switchingFactor * ambientFactor * altitudeFactor),
                Fraction.FromRatio(switchingFactor),
                Fraction.FromRatio(ambientFactor),
                Fraction.FromRatio(altitudeFactor));
    }

    private static double SwitchingFactor(DriveRating drive, SwitchingFrequency switching, List<string> reasons)
    {
        var points = drive.SwitchingDerating;
        if (points.Count == 0 || switching.Hertz <= points[0].Frequency.Hertz)
        {
            return points.Count == 0 ? 1 : points[0].Current.Ratio;
        }

        for (var upper = 1; upper < points.Count; upper++)
        {
            var (below, above) = (points[upper - 1], points[upper]);
            if (switching.Hertz <= above.Frequency.Hertz)
            {
                var part = (switching.Hertz - below.Frequency.Hertz) / (above.Frequency.Hertz - below.Frequency.Hertz);
                return below.Current.Ratio + (part * (above.Current.Ratio - below.Current.Ratio));
            }
        }

        reasons.Add(Text($"switching frequency {switching.Hertz / 1000:G4} kHz is above the highest permitted, {points[^1].Frequency.Hertz / 1000:G4} kHz"));
        return points[^1].Current.Ratio;
    }

    private static double Linear(double value, double fullUpTo, double lossPerSi) => Math.Clamp(1 - (lossPerSi * (value - fullUpTo)), 0, 1);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
