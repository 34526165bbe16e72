using System.Numerics;

namespace Runup.Dynamics.Plant;

/// <content>The same equations in a frame at rest, where the two axes of the stator need not be alike.</content>
/// <remarks>
/// λm = (S − i_c)/(Γ + 1/Lm(|λm|)) on each axis, Γ and S with the stator's part only where its axis is closed. The core takes i_c = pλm/rc with pλm as it is without core loss:
/// right to the first power of 1/rc, whichever way the field turns.
/// </remarks>
internal sealed partial class DetailedMachine
{
    /// <summary>Rates, currents and torque at some states.</summary>
    internal RestingRates AtRest(in DetailedStates x, in StatorAxes axes, Complex volts)
    {
        var open = axes.Along == default ? new StatorAxes(1, false, false) : axes;
        var rates = AtRest(x, open, volts, default);
        return perCoreOhm > 0 ? AtRest(x, open, volts, perCoreOhm * MagnetizingRate(rates, open)) : rates;
    }

    /// <summary>Current of the stator where its axes are closed.</summary>
    internal Complex StatorA(Complex stator, Complex magnetizing, in StatorAxes axes) => axes.ToRest(axes.Closed(axes.From(StatorA(stator, magnetizing))));

    private RestingRates AtRest(in DetailedStates x, in StatorAxes axes, Complex volts, Complex coreA)
    {
        Span<Complex> cages = [x.First, x.Second];
        cages = cages[..Cages];
        var magnetizing = MagnetizingAtRest(x.Stator, cages, axes, coreA);
        var statorA = StatorA(x.Stator, magnetizing, axes);
        var onAxes = axes.From(statorA);
        var dropV = axes.ToRest(new Complex(StatorOhm * onAxes.Real, (StatorOhm + axes.ExtraOhm) * onAxes.Imaginary));
        var back = -PolePairs * x.MotorRadPerS;
        return new RestingRates(
            axes.ToRest(axes.Closed(axes.From(volts - dropV))),
            CageRate(0, x.First, CageA(0, x.First, magnetizing), back),
            Cages > 1 ? CageRate(1, x.Second, CageA(1, x.Second, magnetizing), back) : default,
            statorA,
            magnetizing,
            TorqueNm(cages, magnetizing));
    }

    private Complex MagnetizingAtRest(Complex stator, ReadOnlySpan<Complex> cages, in StatorAxes axes, Complex coreA)
    {
        var sum = axes.From(-coreA) + (perStatorH * axes.Closed(axes.From(stator)));
        for (var k = 0; k < cages.Length; k++)
        {
            sum += perCageH[k] * axes.From(cages[k]);
        }

        var (along, across) = Gammas(axes);
        var perH = SusceptanceAtRest(sum, along, across);
        return axes.ToRest(new Complex(sum.Real / (along + perH), sum.Imaginary / (across + perH)));
    }

    private Complex MagnetizingRate(in RestingRates rates, in StatorAxes axes)
    {
        var sum = axes.From((perStatorH * rates.Stator) + (perCageH[0] * rates.First) + (Cages > 1 ? perCageH[1] * rates.Second : default));
        var (along, across) = Gammas(axes);
        var perH = Iron(rates.Magnetizing.Magnitude).PerH;
        return axes.ToRest(new Complex(sum.Real / (along + perH), sum.Imaginary / (across + perH)));
    }

    private (double Along, double Across) Gammas(in StatorAxes axes)
    {
        var cages = perCageH.Sum();
        return (cages + (axes.AlongClosed ? perStatorH : 0), cages + (axes.AcrossClosed ? perStatorH : 0));
    }

    // 1/Lm at the flux that the sums make by it; the more flux the iron is taken to have the less they make, so that Newton's steps end.
    private double SusceptanceAtRest(Complex sum, double along, double across)
    {
        if (ironShare <= 0)
        {
            return perMagnetizingH;
        }

        var flux = sum.Magnitude / (along + perMagnetizingH);
        for (var i = 0; i < MostSteps; i++)
        {
            var (perH, slope) = Iron(flux);
            double u = sum.Real / (along + perH), w = sum.Imaginary / (across + perH);
            var made = Math.Sqrt((u * u) + (w * w));
            var excess = flux - made;
            var bend = made > 0 ? slope * ((u * u / (along + perH)) + (w * w / (across + perH))) / made : 0;
            flux = Math.Max(flux - (excess / (1 + bend)), 0);
            if (Math.Abs(excess) <= Close * made)
            {
                break;
            }
        }

        return Iron(flux).PerH;
    }
}
