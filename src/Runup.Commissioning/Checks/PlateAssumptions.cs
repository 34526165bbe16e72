using Runup.Engineering;
using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;

namespace Runup.Commissioning.Checks;

/// <summary>What was taken to find a motor's circuit, and what of the plate had to give way.</summary>
internal static class PlateAssumptions
{
    internal static IReadOnlyList<Assumption> Of(CircuitFit? fit, PlateTrust trust = PlateTrust.WithTolerances) => fit is CircuitFit.Fitted fitted
        ? [.. fitted.Assumptions, .. fitted.GaveUp.Select(GaveWay), .. EnsembleAssumptions.Of(trust)]
        : [];

    private static Assumption GaveWay(GivenUp gave) =>
        new($"{Name(gave.Datum)} of the plate gave way: {Said.Number(gave.Printed)} is printed", Said.Number(gave.Used), gave.Why, false);

    private static string Name(PlateDatum datum) => datum switch
    {
        PlateDatum.PowerFactor => "power factor",
        PlateDatum.Efficiency => "efficiency",
        PlateDatum.LockedRotorCurrent => "locked-rotor current",
        PlateDatum.LockedRotorTorque => "locked-rotor torque",
        PlateDatum.BreakdownTorque => "breakdown torque",
        PlateDatum.CodeLetter => "code letter",
        _ => datum.ToString().ToLowerInvariant(),
    };
}
