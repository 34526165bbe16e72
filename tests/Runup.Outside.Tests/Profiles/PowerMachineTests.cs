using Runup.Profiles;

namespace Runup.Outside.Tests.Profiles;

/// <summary>
/// Held against the published tables of IEC 61800-7-201 (CiA 402), <c>data/cases/cia402-*.csv</c>. Two public implementations are
/// the tables' sources (named in their first lines); rows marked memory there are recalled.
/// </summary>
public sealed class PowerMachineTests
{
    public static TheoryData<string, string, string, string> Transitions =>
        [.. PowerTables.Rows("transitions").Select(r => (r["no"], r["from"], r["to"], r["trigger"]))];

    public static TheoryData<string, int> Words()
    {
        var data = new TheoryData<string, int>();
        foreach (var row in PowerTables.Rows("commands"))
        {
            for (var word = 0; word < 16; word++)
            {
                if (Matches(row, word))
                {
                    data.Add(row["command"], word);
                }
            }
        }

        return data;
    }

    [Fact]
    public void Every_state_is_told_by_its_mask_and_value_among_all_words()
    {
        var rows = PowerTables.Rows("states");
        rows.Count.ShouldBe(8);
        for (var bits = 0; bits <= ushort.MaxValue; bits++)
        {
            var told = rows.Where(r => (bits & PowerTables.Hex(r["mask"])) == PowerTables.Hex(r["value"])).Select(r => (PowerState?)PowerTables.State(r["state"])).ToList();
            told.Count.ShouldBeLessThanOrEqualTo(1);
            new StatusWord((ushort)bits).State.ShouldBe(told.FirstOrDefault(), $"0x{bits:X4}");
        }
    }

    [Fact]
    public void The_example_words_tell_their_states_and_bits()
    {
        foreach (var row in PowerTables.Rows("states"))
        {
            var word = new StatusWord(PowerTables.Hex(row["statusword_example_with_voltage_enabled"]));
            word.State.ShouldBe(PowerTables.State(row["state"]));
            StatusWord.Of(word.State!.Value, word.VoltageEnabled, word.Warning, word.Remote, word.TargetReached, word.InternalLimit).State.ShouldBe(word.State);
        }
    }

    [Fact]
    public void The_bits_of_the_status_word_stand_where_the_table_has_them()
    {
        var bits = PowerTables.Rows("statusword-bits").DistinctBy(r => r["name"]).ToDictionary(r => r["name"], r => int.Parse(r["bit"]), StringComparer.Ordinal);
        new StatusWord((ushort)(1 << bits["voltage enabled"])).VoltageEnabled.ShouldBeTrue();
        new StatusWord((ushort)(1 << bits["warning"])).Warning.ShouldBeTrue();
        new StatusWord((ushort)(1 << bits["remote"])).Remote.ShouldBeTrue();
        new StatusWord((ushort)(1 << bits["target reached (operation-mode specific in later editions)"])).TargetReached.ShouldBeTrue();
        new StatusWord((ushort)(1 << bits["internal limit active"])).InternalLimit.ShouldBeTrue();
        var operation = StatusWord.Of(PowerState.OperationEnabled);
        operation.Has(bits["ready to switch on"]).ShouldBeTrue();
        operation.Has(bits["switched on"]).ShouldBeTrue();
        operation.Has(bits["operation enabled"]).ShouldBeTrue();
        operation.Has(bits["quick stop (0 = quick stop active/requested)"]).ShouldBeTrue();
        StatusWord.Of(PowerState.Fault).Has(bits["fault"]).ShouldBeTrue();
        StatusWord.Of(PowerState.SwitchOnDisabled).Has(bits["switch on disabled"]).ShouldBeTrue();
    }

    [Theory]
    [MemberData(nameof(Words))]
    public void Every_word_of_a_command_is_taken_for_it(string command, int word) =>
        PowerMachine.CommandOf(new ControlWord((ushort)word)).ShouldBe(Command(command));

    [Fact]
    public void The_words_that_are_sent_are_the_typical_ones()
    {
        var typical = PowerTables.Rows("commands").ToDictionary(r => r["command"], r => PowerTables.Hex(r["controlword_hex_typical"]), StringComparer.Ordinal);
        ControlWord.Shutdown.Bits.ShouldBe(typical["shutdown"]);
        ControlWord.SwitchOn.Bits.ShouldBe(typical["switch on"]);
        ControlWord.EnableOperation.Bits.ShouldBe(typical["switch on + enable operation"]);
        ControlWord.DisableVoltage.Bits.ShouldBe(typical["disable voltage"]);
        ControlWord.QuickStop.Bits.ShouldBe(typical["quick stop"]);
        ControlWord.SwitchOn.Bits.ShouldBe(typical["disable operation"]);
        ControlWord.FaultReset.Bits.ShouldBe(typical["fault reset"]);
    }

    [Fact]
    public void In_velocity_mode_the_run_word_is_0x7F() =>
        // Source: note in cia402-controlword-bits.csv: run command in vl mode 0x007F; 0x000F alone holds the ramp's input at zero.
        ControlWord.EnableOperation.WithRamp.Bits.ShouldBe((ushort)0x007F);

    [Theory]
    [MemberData(nameof(Transitions))]
    public void Every_transition_of_the_table_is_made(string number, string from, string to, string trigger)
    {
        if (number is "16")
        {
            // Only with quick-stop option codes 5 to 8, which the machine does not have: it stays until the stop is done.
            PowerMachine.OnControlWord(PowerState.QuickStopActive, default, ControlWord.EnableOperation, faultPending: false).ShouldBe(PowerState.QuickStopActive);
            return;
        }

        if (number is "0")
        {
            default(PowerState).ShouldBe(PowerTables.State(to), "a drive starts up not ready");
            return;
        }

        IEnumerable<PowerState> states = from is "any" ? Enum.GetValues<PowerState>().Where(s => s is not PowerState.Fault) : [PowerTables.State(from)];
        foreach (var state in states)
        {
            foreach (var reached in Reached(state, trigger))
            {
                reached.ShouldBe(PowerTables.State(to), $"transition {number} from {state}");
            }
        }
    }

    [Fact]
    public void No_word_makes_a_transition_that_the_table_lacks()
    {
        var known = PowerTables.Rows("transitions").Where(r => r["from"] is not ("any" or "Start")).Select(r => (PowerTables.State(r["from"]), PowerTables.State(r["to"]))).ToHashSet();
        foreach (var state in Enum.GetValues<PowerState>())
        {
            for (var word = 0; word <= 0xFF; word++)
            {
                var next = PowerMachine.OnControlWord(state, default, new ControlWord((ushort)word), faultPending: false);
                (next == state || known.Contains((state, next))).ShouldBeTrue($"{state} with 0x{word:X2} went to {next}");
            }
        }
    }

    private static IEnumerable<PowerState> Reached(PowerState state, string trigger)
    {
        PowerState On(ControlWord word) => PowerMachine.OnControlWord(state, default, word, faultPending: false);
        if (trigger.StartsWith("automatic", StringComparison.Ordinal))
        {
            return [state == PowerState.NotReadyToSwitchOn ? PowerMachine.OnReady(state) : PowerMachine.OnFaultReactionDone(state)];
        }

        if (trigger.StartsWith("fault occurs", StringComparison.Ordinal))
        {
            return [PowerMachine.OnFault(state)];
        }

        if (trigger.StartsWith("fault reset", StringComparison.Ordinal))
        {
            return [On(ControlWord.FaultReset)];
        }

        if (trigger.StartsWith("disable voltage, or quick stop completed", StringComparison.Ordinal))
        {
            return [On(ControlWord.DisableVoltage), PowerMachine.OnQuickStopDone(state)];
        }

        return trigger.Split(" (", StringSplitOptions.None)[0] switch
        {
            "shutdown" => [On(ControlWord.Shutdown)],
            "switch on" => [On(ControlWord.SwitchOn)],
            "enable operation" => [On(ControlWord.EnableOperation)],
            "disable operation" => [On(ControlWord.SwitchOn)],
            "disable voltage" => [On(ControlWord.DisableVoltage)],
            "disable voltage or quick stop" => [On(ControlWord.DisableVoltage), On(ControlWord.QuickStop)],
            "quick stop" => [On(ControlWord.QuickStop)],
            _ => throw new InvalidOperationException($"The table has a trigger that this test does not know: {trigger}"),
        };
    }

    private static PowerCommand Command(string name) => name switch
    {
        "shutdown" => PowerCommand.Shutdown,
        "switch on" or "disable operation" => PowerCommand.SwitchOn,
        "switch on + enable operation" or "enable operation" => PowerCommand.EnableOperation,
        "disable voltage" => PowerCommand.DisableVoltage,
        "quick stop" => PowerCommand.QuickStop,
        _ => throw new InvalidOperationException($"The table has a command that this test does not know: {name}"),
    };

    private static bool Matches(Dictionary<string, string> row, int word)
    {
        if (row["bit7"] is not "0")
        {
            return false;
        }

        foreach (var bit in (int[])[3, 2, 1, 0])
        {
            var wanted = row[$"bit{bit}"];
            if (wanted is not "x" && wanted != ((word >> bit) & 1).ToString(System.Globalization.CultureInfo.InvariantCulture))
            {
                return false;
            }
        }

        return true;
    }
}
