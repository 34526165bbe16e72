using System.Numerics;
using Runup.Engineering.Motors;

namespace Runup.Dynamics.Plant;

/// <summary>The induction machine with one or two cages and iron that saturates; complex numbers x = q − j·d, as in <see cref="InductionMachine{T}"/>.</summary>
/// <remarks>
/// <para>
/// pλs = vs − rs·is − jω·λs; pλk = −rk·ik − j(ω − ωr)·λk for each cage k; λs = Lls·is + λm, λk = Lk·ik + λm; Te = 3/2·P/2·Σ Im(λk·ik*), the cages beside one another beyond the
/// magnetizing branch. λm = S/(Γ + 1/Lm(|λm|) + jω/rc), S = λs/Lls + Σ λk/Lk, Γ the sum of their factors; 1/Lm(λ) = (1 + a·(ψ⁶ − 1))/Lm, ψ = |λ|/λ₀: |λm| is found by Newton's method.
/// </para>
/// <para>Assumes that leakage does not saturate, that the iron follows the magnitude of the flux alone, and core loss as in the plain model.</para>
/// </remarks>
[Engineering.Source("krause", "chapter 6, voltage and flux linkage equations in the arbitrary reference frame (from memory)")]
internal sealed partial class DetailedMachine
{
    private const int MostSteps = 20;
    private const double Close = 1e-12;

    private readonly double perStatorH;
    private readonly double[] perCageH;
    private readonly double[] cageOhm;
    private readonly double perMagnetizingH;
    private readonly double perCoreOhm;
    private readonly double ironShare;
    private readonly double referenceWb;

    internal DetailedMachine(EquivalentCircuit motor, PlantDetail detail)
    {
        var circuit = detail.TwoCages ? motor : motor.WithOneCage();
        var radPerS = circuit.RatedFrequency.RadiansPerSecond;
        StatorOhm = circuit.StatorResistance.Ohms;
        perStatorH = radPerS / circuit.StatorLeakage.Ohms;
        (double Ohms, double Leakage)[] cages = circuit.SecondCage is { } second
            ? [(circuit.RotorResistance.Ohms, circuit.RotorLeakage.Ohms), (second.Resistance.Ohms, second.Leakage.Ohms)]
            : [(circuit.RotorResistance.Ohms, circuit.RotorLeakage.Ohms)];
        cageOhm = [.. cages.Select(c => c.Ohms)];
        perCageH = [.. cages.Select(c => radPerS / c.Leakage)];
        perMagnetizingH = radPerS / circuit.Magnetizing.Ohms;
        perCoreOhm = circuit.CoreLoss is { } core ? 1 / core.Ohms : 0;
        PolePairs = circuit.Poles.Pairs;
        ironShare = detail.IronShare.Ratio;
        var noLoad = circuit.Magnetizing.Ohms / (circuit.Magnetizing.Ohms + circuit.StatorLeakage.Ohms);
        referenceWb = noLoad * circuit.RatedVoltage.Phase.Volts * Math.Sqrt(2) / radPerS;
        var outside = perCageH.Sum();
        TransientH = (1 / perStatorH) + (1 / (perMagnetizingH + outside));
        FastestRate = (StatorOhm + cageOhm.Max()) * Math.Max(1 / TransientH, perCageH.Max());
    }

    internal int Cages => cageOhm.Length;

    internal double StatorOhm { get; }

    internal double PolePairs { get; }

    /// <summary>Inductance that the stator shows while the rotor's fluxes are held.</summary>
    internal double TransientH { get; }

    internal double FastestRate { get; }

    /// <summary>Flux of the magnetizing branch.</summary>
    internal Complex Magnetizing(Complex stator, ReadOnlySpan<Complex> cages, double frameRadPerS, bool fed)
    {
        var sum = fed ? stator * perStatorH : default;
        var gamma = fed ? perStatorH : 0;
        for (var k = 0; k < cages.Length; k++)
        {
            sum += cages[k] * perCageH[k];
            gamma += perCageH[k];
        }

        var core = frameRadPerS * perCoreOhm;
        return sum / new Complex(gamma + Susceptance(sum.Magnitude, gamma, core), core);
    }

    // 1/Lm at the flux that makes |λm|·|Γ + 1/Lm + jω/rc| = |S|.
    private double Susceptance(double sum, double gamma, double core)
    {
        if (ironShare <= 0)
        {
            return perMagnetizingH;
        }

        var flux = sum / (gamma + perMagnetizingH);
        for (var i = 0; i < MostSteps; i++)
        {
            var (g, slope) = Iron(flux);
            var size = Math.Sqrt(((gamma + g) * (gamma + g)) + (core * core));
            var excess = (flux * size) - sum;
            flux -= excess / (size + (flux * (gamma + g) * slope / size));
            if (Math.Abs(excess) <= Close * sum)
            {
                break;
            }
        }

        return Iron(flux).PerH;
    }

    private (double PerH, double Slope) Iron(double flux)
    {
        var psi = flux / referenceWb;
        var fifth = psi * psi * psi * psi * psi;
        return (perMagnetizingH * (1 + (ironShare * ((fifth * psi) - 1))), perMagnetizingH * ironShare * 6 * fifth / referenceWb);
    }

    internal Complex StatorA(Complex stator, Complex magnetizing) => (stator - magnetizing) * perStatorH;

    internal Complex CageA(int cage, Complex flux, Complex magnetizing) => (flux - magnetizing) * perCageH[cage];

    internal Complex CageRate(int cage, Complex flux, Complex currentA, double slipRadPerS) =>
        (-cageOhm[cage] * currentA) - (new Complex(0, slipRadPerS) * flux);

    /// <summary>Developed torque, in N·m.</summary>
    internal double TorqueNm(ReadOnlySpan<Complex> cages, Complex magnetizing)
    {
        var sum = 0.0;
        for (var k = 0; k < cages.Length; k++)
        {
            // λq·id − λd·iq with x = q − j·d.
            var (flux, current) = (cages[k], CageA(k, cages[k], magnetizing));
            sum += (flux.Imaginary * current.Real) - (flux.Real * current.Imaginary);
        }

        return 1.5 * PolePairs * sum;
    }
}
