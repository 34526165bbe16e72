namespace Runup.Engineering.Motors;

/// <summary>The largest torque of a motor with two cages, by search: a coarse scan even in the logarithm of slip, then parabolas through the best three.</summary>
internal static class TwoCageBreakdown
{
    private const double SmallestSlip = 2e-3;
    private const int ScanSteps = 24;
    private const int Refinements = 6;
    private const double Narrowing = 4;
    private const double BesideHighest = 0.05;
    private static readonly double Step = -Math.Log(SmallestSlip) / ScanSteps;

    internal static (double Torque_Nm, double Slip) Largest(in PhaseCircuit circuit, double rth, double xth, double vth, int sign)
    {
        Span<double> scanned = stackalloc double[ScanSteps + 1];
        var highest = double.NegativeInfinity;
        for (var step = 0; step <= ScanSteps; step++)
        {
            scanned[step] = Torque(circuit, rth, xth, vth, sign, -Step * step);
            highest = Math.Max(highest, scanned[step]);
        }

        // Two cages can make two humps; of two that are nearly as high, the scan may have come nearer to the top of the lower one.
        var (best, bestTorque) = (0.0, double.NegativeInfinity);
        for (var step = 0; step <= ScanSteps; step++)
        {
            var isHump = (step == 0 || scanned[step] >= scanned[step - 1]) && (step == ScanSteps || scanned[step] > scanned[step + 1]);
            if (isHump && highest - scanned[step] <= BesideHighest * Math.Abs(highest) && Top(circuit, rth, xth, vth, sign, -Step * step, scanned[step]) is var (place, torque) && torque > bestTorque)
            {
                (best, bestTorque) = (place, torque);
            }
        }

        return (sign * bestTorque, sign * Math.Exp(best));
    }

    private static (double Place, double Torque) Top(in PhaseCircuit circuit, double rth, double xth, double vth, int sign, double from, double torqueThere)
    {
        var (best, bestTorque) = (from, torqueThere);
        var width = Step;
        for (var round = 0; round < Refinements; round++)
        {
            var (below, above) = (best - width, Math.Min(0, best + width));
            var (atBelow, atAbove) = (Torque(circuit, rth, xth, vth, sign, below), Torque(circuit, rth, xth, vth, sign, above));
            var (down, up) = ((best - below) * (bestTorque - atAbove), (above - best) * (bestTorque - atBelow));
            var vertex = down + up > 0 ? best - (0.5 * (((best - below) * down) - ((above - best) * up)) / (down + up)) : best;
            if (Torque(circuit, rth, xth, vth, sign, Math.Min(0, vertex)) is var torque && torque > bestTorque)
            {
                (best, bestTorque) = (Math.Min(0, vertex), torque);
            }

            width /= Narrowing;
        }

        return (best, bestTorque);
    }

    private static double Torque(in PhaseCircuit circuit, double rth, double xth, double vth, int sign, double logSlip)
    {
        var (g, b) = circuit.RotorAdmittance(sign * Math.Exp(logSlip));
        var (re, im) = (1 + (rth * g) - (xth * b), (rth * b) + (xth * g));
        return sign * 3 * vth * vth * g / (circuit.SynchronousSpeed_radPerS * ((re * re) + (im * im)));
    }
}
