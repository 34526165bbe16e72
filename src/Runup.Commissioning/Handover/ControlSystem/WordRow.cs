using Runup.Profiles;
using Runup.Quantities;

namespace Runup.Commissioning.Handover.ControlSystem;

/// <summary>A word that a program writes or meets, with what it means.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Word">The word in hex, such as <c>000Fh</c>; of a state the mask before it, as <c>&amp; 006Fh = 0027h</c>.</param>
/// <param name="Meaning">What it does or tells.</param>
public sealed record WordRow(string Name, string Word, string Meaning)
{
    /// <summary>Whether the word brings a motor that stands nearer to running.</summary>
    public bool IsOnTheWayToRun { get; init; }

    /// <summary>The command words of a drive; that for the other direction only where it is permitted.</summary>
    public static IReadOnlyList<WordRow> OfCommand(CommandInterface command, bool mayReverse) =>
    [
        new("shutdown", Of(command, ControlWord.Shutdown), "to ready to switch on") { IsOnTheWayToRun = true },
        new("switch on", Of(command, ControlWord.SwitchOn), "to switched on; from operation enabled: stop") { IsOnTheWayToRun = true },
        new("run", Of(command, ControlWord.EnableOperation), "enable operation: the motor follows the reference") { IsOnTheWayToRun = true },
        .. (mayReverse, command.ReverseBit) switch
        {
            (false, _) => (WordRow[])[],
            (true, null) => [new("run in reverse", Of(command, ControlWord.EnableOperation), "the same word; the reference is negative") { IsOnTheWayToRun = true }],
            _ => [new("run in reverse", Of(command, ControlWord.EnableOperation, Rotation.Reverse), "the same, with the reverse bit") { IsOnTheWayToRun = true }],
        },
        new("quick stop", Of(command, ControlWord.QuickStop), "as fast as the drive's quick-stop setting says"),
        new("coast", Of(command, ControlWord.DisableVoltage), "the motor is no longer fed and turns until it stands"),
        new("reset a trip", Of(command, ControlWord.FaultReset), "as bit 7 rises: write coast first, then this"),
    ];

    /// <summary>The states that a status word tells.</summary>
    public static IReadOnlyList<WordRow> OfStatus { get; } =
    [
        State("not ready to switch on", PowerState.NotReadyToSwitchOn, "starting up"),
        State("switch on disabled", PowerState.SwitchOnDisabled, "at rest; begin with shutdown"),
        State("ready to switch on", PowerState.ReadyToSwitchOn, "at rest"),
        State("switched on", PowerState.SwitchedOn, "one word from running"),
        State("operation enabled", PowerState.OperationEnabled, "the motor is fed"),
        State("quick stop active", PowerState.QuickStopActive, "stopping"),
        State("fault reaction active", PowerState.FaultReactionActive, "tripping"),
        State("fault", PowerState.Fault, "tripped; a person finds out why before it is reset"),
    ];

    /// <summary>A word in hex with an h behind it.</summary>
    internal static string Hex(long word) => FormattableString.Invariant($"{word:X4}h");

    private static string Of(CommandInterface command, ControlWord word, Rotation rotation = Rotation.Forward) =>
        Hex(CommandCodec.WordRaw(command, new DriveCommand(word, ElectricalFrequency.FromHertz(0), rotation)));

    private static WordRow State(string name, PowerState state, string meaning) => new(name, $"& {Hex(MaskOf(state))} = {Hex(StatusWord.Of(state).Bits)}", meaning);

    private static ushort MaskOf(PowerState state) => state is PowerState.ReadyToSwitchOn or PowerState.SwitchedOn or PowerState.OperationEnabled or PowerState.QuickStopActive
        ? StatusWord.StateMask
        : StatusWord.StateMaskWithoutQuickStop;
}
