using Runup.Engineering;

namespace Runup.Profiles;

/// <summary>The state machine of IEC 61800-7-201: which state follows which, on which word or event.</summary>
/// <remarks>
/// One transition a call. A word that takes power away (disable voltage, quick stop, shutdown) acts whatever its fault-reset bit says;
/// one that gives power needs that bit clear, as the standard's table of commands has it.
/// Quick stop goes over to switch on disabled when the motor stands, as quick-stop option codes 1 to 4 do.
/// </remarks>
[Source("cia402", "power state machine, transitions 0 to 16")]
public static class PowerMachine
{
    /// <summary>The state after the control word was seen; <paramref name="was"/> is the word seen before, for the rising fault-reset bit.</summary>
    public static PowerState OnControlWord(PowerState state, ControlWord was, ControlWord now, bool faultPending)
    {
        var command = CommandOf(now);
        return (state, command) switch
        {
            (PowerState.SwitchOnDisabled, PowerCommand.Shutdown) => PowerState.ReadyToSwitchOn,
            (PowerState.ReadyToSwitchOn, PowerCommand.SwitchOn or PowerCommand.EnableOperation) => PowerState.SwitchedOn,
            (PowerState.ReadyToSwitchOn, PowerCommand.DisableVoltage or PowerCommand.QuickStop) => PowerState.SwitchOnDisabled,
            (PowerState.SwitchedOn, PowerCommand.EnableOperation) => PowerState.OperationEnabled,
            (PowerState.SwitchedOn, PowerCommand.Shutdown) => PowerState.ReadyToSwitchOn,
            (PowerState.SwitchedOn, PowerCommand.DisableVoltage or PowerCommand.QuickStop) => PowerState.SwitchOnDisabled,
            (PowerState.OperationEnabled, PowerCommand.SwitchOn) => PowerState.SwitchedOn,
            (PowerState.OperationEnabled, PowerCommand.Shutdown) => PowerState.ReadyToSwitchOn,
            (PowerState.OperationEnabled, PowerCommand.DisableVoltage) => PowerState.SwitchOnDisabled,
            (PowerState.OperationEnabled, PowerCommand.QuickStop) => PowerState.QuickStopActive,
            (PowerState.QuickStopActive, PowerCommand.DisableVoltage) => PowerState.SwitchOnDisabled,
            (PowerState.Fault, _) when now.Has(7) && !was.Has(7) && !faultPending => PowerState.SwitchOnDisabled,
            _ => state,
        };
    }

    /// <summary>The state after the start-up is done.</summary>
    public static PowerState OnReady(PowerState state) => state == PowerState.NotReadyToSwitchOn ? PowerState.SwitchOnDisabled : state;

    /// <summary>The state after a fault occurred.</summary>
    public static PowerState OnFault(PowerState state) => state == PowerState.Fault ? state : PowerState.FaultReactionActive;

    /// <summary>The state after the reaction to a fault is done.</summary>
    public static PowerState OnFaultReactionDone(PowerState state) => state == PowerState.FaultReactionActive ? PowerState.Fault : state;

    /// <summary>The state after a quick stop has brought the motor to standstill.</summary>
    public static PowerState OnQuickStopDone(PowerState state) => state == PowerState.QuickStopActive ? PowerState.SwitchOnDisabled : state;

    /// <summary>The word that brings a drive one state nearer to operation enabled; null where none may: starting up, or a fault, which is a person's to reset.</summary>
    public static ControlWord? TowardOperation(PowerState state) => state switch
    {
        PowerState.SwitchOnDisabled => ControlWord.Shutdown,
        PowerState.ReadyToSwitchOn => ControlWord.SwitchOn,
        PowerState.SwitchedOn or PowerState.OperationEnabled => ControlWord.EnableOperation,
        PowerState.QuickStopActive => ControlWord.DisableVoltage,
        _ => null,
    };

    /// <summary>The command that a control word gives.</summary>
    public static PowerCommand CommandOf(ControlWord word) => (word.Has(3), word.Has(2), word.Has(1), word.Has(0), word.Has(7)) switch
    {
        (_, _, false, _, _) => PowerCommand.DisableVoltage,
        (_, false, true, _, _) => PowerCommand.QuickStop,
        (_, true, true, false, _) => PowerCommand.Shutdown,
        (_, _, _, _, true) => PowerCommand.None,
        (false, true, true, true, false) => PowerCommand.SwitchOn,
        (true, true, true, true, false) => PowerCommand.EnableOperation,
    };
}

/// <summary>What a control word asks of the state machine.</summary>
public enum PowerCommand
{
    /// <summary>Nothing: power would be given, but the fault-reset bit is set.</summary>
    None,

    /// <summary>Disable voltage.</summary>
    DisableVoltage,

    /// <summary>Quick stop.</summary>
    QuickStop,

    /// <summary>Shutdown.</summary>
    Shutdown,

    /// <summary>Switch on, or disable operation.</summary>
    SwitchOn,

    /// <summary>Enable operation.</summary>
    EnableOperation,
}
