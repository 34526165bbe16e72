using Runup.Dynamics;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.SimulatedDrive;

/// <content>What a person does at its terminals, and has it measure.</content>
public sealed partial class VirtualDrive
{
    private const string SecondRamps = "second-ramps";

    private readonly DigitalInputs inputs = new();
    private TunedMotor? tuned;
    private bool tuning;

    /// <summary>What came of the last auto-tune; null where there was none, or while it goes on.</summary>
    public AutoTuneOutcome? Tuned
    {
        get
        {
            lock (gate)
            {
                return simulation.TuneOutcome;
            }
        }
    }

    /// <summary>An auto-tune goes on.</summary>
    public bool IsTuning
    {
        get
        {
            lock (gate)
            {
                return simulation.IsTuning;
            }
        }
    }

    /// <summary>A person has it measure its motor; what it finds stands at work from then on, through power-off.</summary>
    public PanelAnswer TuneAtPanel(AutoTune kind)
    {
        lock (gate)
        {
            var why = simulation.IsTuning ? "it is measuring its motor already"
                : state is PowerState.Fault or PowerState.FaultReactionActive ? "it is tripped"
                : state == PowerState.NotReadyToSwitchOn ? "it is starting up"
                : simulation.Order.Run || !simulation.MayTune ? "the motor turns, or is told to run"
                : null;
            if (why is not null)
            {
                return new PanelAnswer.Ignored(why);
            }

            simulation.BeginTune(kind);
            tuning = true;
            return new PanelAnswer.Followed();
        }
    }

    /// <summary>A person puts voltage on one of its inputs, or takes it away.</summary>
    /// <param name="number">From 1.</param>
    /// <param name="voltage">Whether there is voltage.</param>
    /// <remarks>Simulated are the second ramps, the reset of a trip and the trip from outside.</remarks>
    public PanelAnswer PutInput(int number, bool voltage)
    {
        lock (gate)
        {
            if (number < 1 || number > DigitalInputs.Count)
            {
                return new PanelAnswer.Ignored($"it has inputs 1 to {DigitalInputs.Count}");
            }

            inputs.Put(number, voltage);
            switch (DigitalInputs.FunctionOf(number, memory.Settings))
            {
                case SecondRamps:
                    Tell(simulation.Order);
                    return new PanelAnswer.Followed();
                case "trip-reset":
                    if (voltage)
                    {
                        ResetAtPanel();
                    }

                    return new PanelAnswer.Followed();
                case "external-trip":
                    if (voltage)
                    {
                        simulation.Trip(TripCause.External);
                    }

                    return new PanelAnswer.Followed();
                case { } other:
                    return new PanelAnswer.Ignored($"its input {number} is for {other}, which is not simulated");
                default:
                    return new PanelAnswer.Ignored($"its input {number} is for nothing by its settings");
            }
        }
    }

    /// <summary>An order as the control gets it: whether on the second ramps, an input says.</summary>
    private void Tell(in DriveOrder order) => simulation.Order = order with { SecondRamps = inputs.Ask(SecondRamps, memory.Settings) };

    private void TakeTuned()
    {
        if (!tuning || simulation.IsTuning)
        {
            return;
        }

        tuning = false;
        if (simulation.TuneOutcome is AutoTuneOutcome.Done done)
        {
            tuned = done.Motor;
            TryReconfigure();
        }
    }
}
