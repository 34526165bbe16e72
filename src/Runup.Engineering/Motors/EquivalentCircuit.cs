using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>
/// T circuit of an induction motor, per phase of the star equivalent, rotor referred to the stator; reactances at rated frequency.
/// </summary>
/// <remarks>
/// Stator Rs + jXls in series, then the magnetizing branch jXm with the core-loss resistance across it, then jXlr + Rr/s; a second cage beside that branch.
/// Friction and stray losses are taken from the developed power: P_shaft = P_developed − P_friction − P_stray.
/// </remarks>
public sealed record EquivalentCircuit
{
    /// <summary>Stator resistance Rs.</summary>
    public required Resistance StatorResistance { get; init; }

    /// <summary>Stator leakage reactance Xls.</summary>
    public required Reactance StatorLeakage { get; init; }

    /// <summary>Magnetizing reactance Xm.</summary>
    public required Reactance Magnetizing { get; init; }

    /// <summary>Rotor leakage reactance Xlr′.</summary>
    public required Reactance RotorLeakage { get; init; }

    /// <summary>Rotor resistance Rr′.</summary>
    public required Resistance RotorResistance { get; init; }

    /// <summary>A second cage (or deep bars) in parallel with the first; null where there is none.</summary>
    public RotorCage? SecondCage { get; init; }

    /// <summary>Core-loss resistance across the magnetizing branch; null where there is no such branch.</summary>
    public Resistance? CoreLoss { get; init; }

    /// <summary>Friction and windage loss at rated speed.</summary>
    public ElectricalPower FrictionLoss { get; init; }

    /// <summary>Additional load (stray) loss at the rated point.</summary>
    public ElectricalPower StrayLoss { get; init; }

    /// <summary>Stator current at the rated point, which scales the stray loss with the square of the current; null where there is no stray loss.</summary>
    public LineCurrent? RatedCurrent { get; init; }

    /// <summary>Full-load speed, at which <see cref="FrictionLoss"/> holds; null where there is none.</summary>
    public ShaftSpeed? RatedSpeed { get; init; }

    /// <summary>Frequency for which the reactances hold.</summary>
    public required ElectricalFrequency RatedFrequency { get; init; }

    /// <summary>Rated voltage, line to line.</summary>
    public required LineVoltage RatedVoltage { get; init; }

    /// <summary>Number of poles.</summary>
    public required PoleCount Poles { get; init; }

    /// <summary>The same motor with one cage that is equal to both at rated slip; itself where there is one.</summary>
    /// <remarks>For calculations that know one cage only: true near the rated point, too little starting torque at standstill.</remarks>
    public EquivalentCircuit WithOneCage()
    {
        if (SecondCage is not { } second)
        {
            return this;
        }

        var synchronous = RatedFrequency.SynchronousSpeed(Poles);
        var slip = RatedSpeed is { } speed ? synchronous.SlipOf(speed).Ratio : 0;
        var first = new System.Numerics.Complex(RotorResistance.Ohms, slip * RotorLeakage.Ohms);
        var other = new System.Numerics.Complex(second.Resistance.Ohms, slip * second.Leakage.Ohms);
        var both = first * other / (first + other);
        var share = other.Real / (first.Real + other.Real);
        var atNoSlip = (RotorLeakage.Ohms * share * share) + (second.Leakage.Ohms * (1 - share) * (1 - share));
        return this with
        {
            RotorResistance = Resistance.FromOhms(both.Real),
            RotorLeakage = Reactance.FromOhms(slip > 0 ? both.Imaginary / slip : atNoSlip),
            SecondCage = null,
        };
    }
}
