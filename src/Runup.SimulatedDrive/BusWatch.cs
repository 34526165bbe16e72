namespace Runup.SimulatedDrive;

/// <summary>A drive's watch over its bus: how long no valid frame came, against its time-out.</summary>
internal sealed class BusWatch
{
    internal TimeSpan TimeOut { get; set; }

    internal TimeSpan Silence { get; private set; }

    internal void Restart() => Silence = TimeSpan.Zero;

    /// <summary>Time passes without a frame; true when the time-out is reached.</summary>
    internal bool Passes(TimeSpan time)
    {
        Silence += time;
        return Silence >= TimeOut;
    }
}
