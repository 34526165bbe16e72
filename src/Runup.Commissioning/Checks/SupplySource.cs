using Runup.Commissioning.Survey;
using Runup.Engineering;
using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>What stands behind the drive's supply terminals.</summary>
/// <remarks>
/// X = U²/S″ from a fault level; of a transformer u_k U²/S_r; of a generator x″d U²/S_r. Prospective short-circuit current I = S″/(√3 U) with three phases, S″/U with one.
/// Validity: bolted fault at the drive's terminals. Assumptions: no voltage factor, nothing fed in by motors, no cable between where the datum does not count it.
/// </remarks>
internal static class SupplySource
{
    /// <summary>Reactance of the source, each phase, in Ω; null where the job does not tell it.</summary>
    internal static double? Reactance_ohm(SupplySurvey supply)
    {
        var voltage = supply.Voltage.Value.Volts;
        return supply switch
        {
            { FaultLevel: { } level } when level.Value.VoltAmperes > 0 => voltage * voltage / level.Value.VoltAmperes,
            { Transformer: { } t } when t.Rating.Value.VoltAmperes > 0 => t.Impedance.Value.Ratio * voltage * voltage / t.Rating.Value.VoltAmperes,
            { Generator: { } g } when g.Rating.Value.VoltAmperes > 0 => g.SubtransientReactance.Value.Ratio * voltage * voltage / g.Rating.Value.VoltAmperes,
            _ => null,
        };
    }

    /// <summary>The current of a short circuit at the drive's terminals; null where the job does not tell the source.</summary>
    [Source("common-practice", "short-circuit current from fault level or short-circuit voltage")]
    internal static LineCurrent? ShortCircuitCurrent(SupplySurvey supply)
    {
        var voltage = supply.Voltage.Value.Volts;
        return Reactance_ohm(supply) is > 0 and var source && voltage / source is var amperes && double.IsFinite(amperes)
            ? LineCurrent.FromAmperes(supply.Phases?.Value == 1 ? amperes : amperes / Math.Sqrt(3))
            : null;
    }
}
