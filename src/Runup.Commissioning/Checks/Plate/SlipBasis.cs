using Runup.Engineering;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>On what a slip that cannot be rests.</summary>
[Source("nema-mg-10", "table 2-1, full-load slip by design")]
internal static class SlipBasis
{
    /// <summary>Largest slip at full load of designs A, B and C.</summary>
    internal const double OrdinaryDesigns = 0.05;

    /// <summary>The basis for calling a slip impossible.</summary>
    internal static Basis Of(PlateFigures figures, double slip) => slip switch
    {
        <= 0 => new Basis.Physics("an induction motor under load turns below its field, n < 120·f/p"),
        _ when figures.Efficiency > 1 - slip || figures.ImpliedProduct > 1 - slip => new Basis.Physics("the rotor alone loses the share s, so that η < 1 − s"),
        _ => new Basis.Standard("NEMA MG 10, table 2-1 (full-load slip of designs A, B and C at most 5 %)", Recalled: false),
    };
}
