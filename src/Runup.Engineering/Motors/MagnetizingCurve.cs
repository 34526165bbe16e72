using System.Runtime.InteropServices;

namespace Runup.Engineering.Motors;

/// <summary>How the magnetizing current grows with flux.</summary>
/// <remarks>
/// i/i₀ = (1 − a) ψ + a ψ⁷, ψ the air-gap flux over the flux at which the magnetizing reactance holds (E₀/f_N), i₀ the magnetizing current there; a the
/// share of that current which the iron takes. a = 0: a straight line. Validity: up to about 1.4 times that flux. The power of 7 is common practice, no source.
/// </remarks>
/// <param name="IronShare">a, from 0.</param>
/// <param name="ReferenceEmf_V">E₀, air-gap voltage of a phase at rated frequency.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct MagnetizingCurve(double IronShare, double ReferenceEmf_V)
{
    private const int Steps = 40;
    private const double Close = 1e-7;

    /// <summary>Magnetizing current over that of a straight line, at a flux relative to the reference.</summary>
    internal double Factor(double flux)
    {
        var square = flux * flux;
        return 1 + (IronShare * ((square * square * square) - 1));
    }

    /// <summary>
    /// The factor at which circuit and curve agree: more of it pulls the air-gap voltage down, so that the two meet once and a bracket finds it.
    /// </summary>
    /// <param name="emfAtFactor">Air-gap voltage with the magnetizing reactance divided by a factor; falls.</param>
    /// <param name="frequencyScale">Frequency over rated frequency.</param>
    internal double Settle<TCircuit>(in TCircuit emfAtFactor, double frequencyScale)
        where TCircuit : struct, IEmfAtFactor
    {
        var reference = ReferenceEmf_V * frequencyScale;
        var low = 1 - IronShare;
        var high = Factor(emfAtFactor.Emf_V(low) / reference);
        var (atLow, atHigh) = (high - low, Excess(emfAtFactor, reference, high));
        for (var step = 0; step < Steps && high - low > Close * high; step++)
        {
            // Regula falsi with the stale end halved (Illinois).
            var middle = ((low * atHigh) - (high * atLow)) / (atHigh - atLow);
            if (!(middle > low && middle < high))
            {
                break;
            }

            var at = Excess(emfAtFactor, reference, middle);
            if (Math.Abs(at) < Close * middle)
            {
                return middle;
            }

            (low, atLow, high, atHigh) = at > 0 ? (middle, at, high, atHigh / 2) : (low, atLow / 2, middle, at);
        }

        return (low + high) / 2;
    }

    private double Excess<TCircuit>(in TCircuit circuit, double reference, double factor)
        where TCircuit : struct, IEmfAtFactor => Factor(circuit.Emf_V(factor) / reference) - factor;
}

/// <summary>A circuit's air-gap voltage with its magnetizing reactance divided by a factor.</summary>
internal interface IEmfAtFactor
{
    /// <summary>The voltage of a phase.</summary>
    double Emf_V(double factor);
}
