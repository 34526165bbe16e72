namespace Runup.SimulatedDrive;

/// <summary>A drive's watch over its bus: how long no valid frame came, against its time-out.</summary>
internal sealed class BusWatch
{
    internal TimeSpan TimeOut { get; set; }

    internal TimeSpan Silence { get; private set; }

    internal bool IsOver => Silence >= TimeOut;

    internal void Restart() => Silence = TimeSpan.Zero;

    internal void Pass(TimeSpan time) => Silence += time;
}
