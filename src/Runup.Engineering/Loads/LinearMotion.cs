using Runup.Quantities;

namespace Runup.Engineering.Loads;

/// <summary>What a shaft moves along a line, by drum, belt, rack or screw: so much speed of the line for so much of the shaft.</summary>
/// <remarks>
/// J = m (v/ω)²; T = F v/(ω η) while the shaft drives, for a lifted mass F = (m − m_c) g. m moved mass, m_c counterweight (kg), v speed of the line (m/s), ω of the shaft (rad/s), F pull (N), g standard
/// gravity (m/s²). Validity: no slip, rope and belt without mass. Assumption: η is of all that lies between shaft and line.
/// </remarks>
/// <param name="Line">Speed along the line.</param>
/// <param name="Shaft">Speed of the shaft at it.</param>
[Source("dubey", "section 2.4, loads with translational motion")]
public sealed record LinearMotion(LinearSpeed Line, ShaftSpeed Shaft)
{
    private const double StandardGravity = 9.80665;

    private double MetresPerRadian => Line.MetresPerSecond / Shaft.RadiansPerSecond;

    /// <summary>A rope or belt on a drum: v = ω d/2.</summary>
    public static LinearMotion OfDrum(Length diameter) => new(LinearSpeed.FromMetresPerSecond(diameter.Metres / 2), ShaftSpeed.FromRadiansPerSecond(1));

    /// <summary>Mass that lies on a conveyor: what it carries in a time, over its length: m = M l/(t v).</summary>
    public static Mass OnConveyor(Mass carried, Duration within, Length length, LinearSpeed speed) =>
        Mass.FromKilograms(carried.Kilograms / within.Seconds * length.Metres / speed.MetresPerSecond);

    /// <summary>The moved mass felt at the shaft as inertia; a counterweight moves too and is added to the mass.</summary>
    public Inertia Reflected(Mass moved) => Inertia.FromKilogramSquareMetres(moved.Kilograms * MetresPerRadian * MetresPerRadian);

    /// <summary>Torque of the shaft that lifts a mass at constant speed; negative where the counterweight is the heavier.</summary>
    public Torque Lifting(Mass mass, Mass counterweight, Efficiency efficiency) => Pulling((mass.Kilograms - counterweight.Kilograms) * StandardGravity, efficiency);

    /// <summary>Torque of the shaft that pulls along the line; a negative pull drives the shaft, and then the efficiency is that of the way back.</summary>
    /// <param name="pull_N">Force along the line, in N.</param>
    /// <param name="efficiency">Of all between shaft and line, in the direction in which power flows.</param>
    public Torque Pulling(double pull_N, Efficiency efficiency) =>
        Torque.FromNewtonMetres(pull_N * MetresPerRadian * (pull_N * MetresPerRadian >= 0 ? 1 / efficiency.Ratio : efficiency.Ratio));
}
