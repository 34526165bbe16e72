using Runup.Quantities;

namespace Runup.Dynamics;

/// <summary>A fault of the conductors between drive and motor.</summary>
public abstract record OutputFault
{
    private OutputFault()
    {
    }

    /// <summary>A conductor is interrupted; the motor's star point is isolated, or its winding in delta.</summary>
    /// <param name="Phase">Which.</param>
    public sealed record PhaseOpen(OutputPhase Phase) : OutputFault;

    /// <summary>A conductor touches earth.</summary>
    /// <param name="Phase">Which.</param>
    /// <param name="Resistance">Of the whole way through earth, back to the supply's earthed point.</param>
    public sealed record ToEarth(OutputPhase Phase, Resistance Resistance) : OutputFault;

    /// <summary>Two conductors touch one another; of one phase twice nothing comes.</summary>
    /// <param name="Phase">One.</param>
    /// <param name="Other">The other.</param>
    /// <param name="Resistance">Between them.</param>
    public sealed record BetweenPhases(OutputPhase Phase, OutputPhase Other, Resistance Resistance) : OutputFault;
}
