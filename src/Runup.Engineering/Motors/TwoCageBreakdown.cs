namespace Runup.Engineering.Motors;

/// <summary>The largest torque of a motor with two cages, by search: a coarse scan even in the logarithm of slip, then parabolas through the best three.</summary>
internal static class TwoCageBreakdown
{
    private const double SmallestSlip = 2e-3;
    private const int ScanSteps = 24;
    private const int Refinements = 4;
    private static readonly double Step = -Math.Log(SmallestSlip) / ScanSteps;

    internal static (double Torque_Nm, double Slip) Largest(in PhaseCircuit circuit, double rth, double xth, double vth, int sign)
    {
        var (best, bestTorque) = (0.0, double.NegativeInfinity);
        for (var step = 0; step <= ScanSteps; step++)
        {
            var place = -Step * step;
            if (Torque(circuit, rth, xth, vth, sign, place) is var torque && torque > bestTorque)
            {
                (best, bestTorque) = (place, torque);
            }
        }

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

            width /= 8;
        }

        return (sign * bestTorque, sign * Math.Exp(best));
    }

    private static double Torque(in PhaseCircuit circuit, double rth, double xth, double vth, int sign, double logSlip)
    {
        var (g, b) = circuit.RotorAdmittance(sign * Math.Exp(logSlip));
        var (re, im) = (1 + (rth * g) - (xth * b), (rth * b) + (xth * g));
        return sign * 3 * vth * vth * g / (circuit.SynchronousSpeed_radPerS * ((re * re) + (im * im)));
    }
}
