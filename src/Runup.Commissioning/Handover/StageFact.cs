namespace Runup.Commissioning.Handover;

/// <summary>How far a stage of the work has come.</summary>
public enum StageState
{
    /// <summary>Done, with nothing open.</summary>
    Done,

    /// <summary>Begun, or done with something open.</summary>
    Open,

    /// <summary>Not done.</summary>
    NotDone,

    /// <summary>A finding holds it up.</summary>
    HeldUp,
}

/// <summary>One large line at the top of a handover.</summary>
/// <param name="Stage">What it is about.</param>
/// <param name="State">How far it has come.</param>
/// <param name="Words">In words, with the figures.</param>
public sealed record StageFact(string Stage, StageState State, string Words);
