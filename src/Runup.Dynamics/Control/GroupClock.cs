using System.Runtime.CompilerServices;

namespace Runup.Dynamics.Control;

/// <summary>The samples that a group of drives has taken, and whether something has come in between from outside.</summary>
internal sealed class GroupClock
{
    /// <summary>Samples so far.</summary>
    internal long Samples { get; private set; }

    /// <summary>A sequencer was told something since its last sample: a trip, a reset, power, new settings.</summary>
    internal bool Disturbed { get; set; }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Pass() => Samples++;
}
