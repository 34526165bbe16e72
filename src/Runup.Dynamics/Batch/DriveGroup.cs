using System.Runtime.CompilerServices;
using Runup.Dynamics.Control;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;

namespace Runup.Dynamics.Batch;

/// <summary>As many drives as there are lanes, ticking together: equal settings, orders and supply; each its own motor and machine.</summary>
/// <remarks>The control and the plant are those of <see cref="DriveSimulation"/>. Nothing is allocated by a tick.</remarks>
internal sealed class DriveGroup<T>
    where T : struct, ILanes<T>
{
    private readonly DriveControl<T> control;
    private readonly DrivePlant<T> plant;
    private T ranAway;

    internal DriveGroup(DriveSystem system, ControlSettings settings, IReadOnlyList<EquivalentCircuit> motors, IReadOnlyList<DrivenMachine> machines)
    {
        control = new DriveControl<T>(settings, system.Drive);
        plant = new DrivePlant<T>(system, motors, machines, DriveSimulation.TickSeconds);
    }

    internal ref readonly PlantReading<T> Reading => ref plant.Reading;

    internal T FrequencyHz => control.FrequencyHz;

    /// <summary>Set where the numbers have run away; such a drive has tripped and rests.</summary>
    internal T RanAway => ranAway;

    internal Sequencer Of(int lane) => control.Of(lane);

    internal T AtTarget => control.AtTarget;

    internal T OutputOn => control.OutputOn;

    /// <summary>One millisecond.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Tick(in DriveOrder order)
    {
        var measured = new Measurement<T>(in plant.Reading);
        var gone = plant.Advance(control.Sample(measured, order));
        if (T.Any(gone))
        {
            Note(gone);
        }
    }

    private void Note(T gone)
    {
        ranAway = T.Or(ranAway, gone);
        for (var lane = 0; lane < T.Count; lane++)
        {
            if (gone.IsSet(lane))
            {
                Of(lane).TripBy(Settings.TripCause.External);
            }
        }
    }
}
