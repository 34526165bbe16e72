using System.Globalization;
using Runup.Commissioning.Survey;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Handover.ControlSystem;

/// <summary>How the control system reaches the drive.</summary>
internal static class LinkFacts
{
    public static IEnumerable<(string Name, string Value)> Of(BusSurvey bus, SettingSet held)
    {
        yield return ("Bus", bus.Kind?.Value switch
        {
            "modbus-tcp" => "Modbus TCP, port 502",
            "modbus-rtu" => "Modbus RTU on a serial line",
            "none" => "the job names none; this page is for whoever connects one",
            { } other => other,
            null => "the job does not say; this page is for whoever connects one",
        });
        yield return ("Unit", Whole(held.Number(Setting.StationAddress)) is { } unit
            ? bus.Address?.Value is { } asked && Text(asked) != unit ? $"{unit} in the drive, but {asked} in the job" : unit
            : bus.Address is { } address ? $"{Text(address.Value)}, as the job has it" : "not known");
        if (bus.Kind?.Value is not "modbus-tcp")
        {
            yield return ("Serial line", string.Join(", ", Serial(bus, held)));
        }
    }

    /// <summary>How registers are counted and how words are put together.</summary>
    public static IEnumerable<(string Name, string Value)> Numbering(CommandInterface command)
    {
        yield return ("Register numbers", "Counted from 0, as they stand in the request itself. A program that counts from 1 takes one more. The column 4xxxx is the same register in the notation that many programs use, where 40001 is register 0 (common practice, no source).");
        yield return ("Requests", "Function 3 reads, 6 writes one register, 16 (10h) writes several. All are holding registers.");
        yield return ("Word order", command.Word.Width == 32 || command.Reference.Width == 32
            ? command.Reference.WordOrder == WordOrder.HighFirst ? "A value of 32 bits takes two registers, its high word in the lower one. Both are written in one request." : "A value of 32 bits takes two registers, its low word in the lower one. Both are written in one request."
            : $"Command word, reference and readings here are single registers. A value of 32 bits elsewhere in this drive has its {(command.Reference.WordOrder == WordOrder.HighFirst ? "high" : "low")} word in the lower register.");
    }

    private static IEnumerable<string> Serial(BusSurvey bus, SettingSet held)
    {
        yield return Whole(held.Number(Setting.BaudRate)) is { } rate ? $"{rate} bit/s" : bus.Baud is { } baud ? $"{Text(baud.Value)} bit/s" : "bit rate not known";
        yield return (held.Choice(Setting.Parity) ?? bus.Parity?.Value) is { } parity ? $"parity {parity}" : "parity not known";
    }

    private static string? Whole(double? number) => number is { } n ? n.ToString("0", CultureInfo.InvariantCulture) : null;

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
