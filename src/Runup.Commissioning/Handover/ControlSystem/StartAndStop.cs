using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Handover.ControlSystem;

/// <summary>The words and waits from rest to running and back, after the state machine of IEC 61800-7-201.</summary>
internal static class StartAndStop
{
    public static IEnumerable<string> Start(CommandInterface command)
    {
        yield return "Read the status word. Masked as listed below it tells the state; a tripped drive is not started.";
        yield return $"Reference 0, command word {Word(command, ControlWord.Shutdown)}; wait for state {State(PowerState.ReadyToSwitchOn)}.";
        yield return $"Command word {Word(command, ControlWord.SwitchOn)}; wait for state {State(PowerState.SwitchedOn)}.";
        yield return $"Reference, then command word {Word(command, ControlWord.EnableOperation)}{(command.RampBits ? $" (bits 4 to 6 too: with {WordRow.Hex(ControlWord.EnableOperation.Bits)} alone the motor stays at zero)" : string.Empty)}; state {State(PowerState.OperationEnabled)}: the motor turns.";
        yield return "Wait for each state before the next word, and give up after a few seconds with a message: never write words blindly one after another.";
    }

    public static IEnumerable<string> Stop(CommandInterface command, SettingSet held)
    {
        yield return $"Stop: command word {Word(command, ControlWord.SwitchOn)}, reference 0{Way(held)}.";
        yield return $"Quick stop: {Word(command, ControlWord.QuickStop)}. Coast: {Word(command, ControlWord.DisableVoltage)}.";
        yield return "None of these is an emergency stop or safe torque off.";
        yield return "A trip is reset by a person who has found out why, once: a program that resets by itself hides the fault and can start the motor.";
    }

    private static string Way(SettingSet held) => held.Choice(Setting.StoppingMethod) switch
    {
        "ramp" => "; the drive is set to stop on its ramp",
        "coast" => "; the drive is set to coast",
        "dc-braking" => "; the drive is set to stop with DC braking",
        _ => string.Empty,
    };

    private static string Word(CommandInterface command, ControlWord word) =>
        WordRow.Hex(CommandCodec.WordRaw(command, new DriveCommand(word, ElectricalFrequency.FromHertz(0), Rotation.Forward)));

    private static string State(PowerState state) => WordRow.Hex(StatusWord.Of(state).Bits);
}
