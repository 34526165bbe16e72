namespace Runup.Engineering.Motors;

/// <summary>Where a motor runs under a small or usual load, for the inner loops; <see cref="OperatingPoint"/> answers for every load.</summary>
internal static class Running
{
    private const int Rounds = 12;
    private const double Close = 1e-5;
    private const double LargestSlip = 0.9;

    /// <summary>
    /// The slip from the torque at synchronous speed by a few secant steps on the nearly straight part of the curve; where the voltage is too low for the load,
    /// the last step's state.
    /// </summary>
    /// <param name="circuit">The motor.</param>
    /// <param name="phase_V">Phase voltage.</param>
    /// <param name="load_Nm">Torque at the shaft; zero: the motor turns only itself.</param>
    internal static PhaseFlow At(in PhaseCircuit circuit, double phase_V, double load_Nm = 0)
    {
        var flow = circuit.At(phase_V, 0);
        var lacking = load_Nm - flow.ShaftTorque_Nm;
        if (!(lacking > 0))
        {
            return flow;
        }

        // To begin with: torque at small slip is 3 E² s / (Rr ω_s).
        var slip = lacking * circuit.RotorResistance_ohm * circuit.SynchronousSpeed_radPerS / (3 * flow.AirGapEmf_V * flow.AirGapEmf_V);
        var before = (Slip: 0.0, Excess: -lacking);
        for (var round = 0; round < Rounds; round++)
        {
            slip = double.IsNaN(slip) ? LargestSlip : Math.Clamp(slip, 0, LargestSlip);
            flow = circuit.At(phase_V, slip);
            var excess = flow.ShaftTorque_Nm - load_Nm;
            if (Math.Abs(excess) < Close * lacking || excess == before.Excess)
            {
                break;
            }

            var next = slip - (excess * (slip - before.Slip) / (excess - before.Excess));
            before = (slip, excess);
            slip = next;
        }

        return flow;
    }
}
