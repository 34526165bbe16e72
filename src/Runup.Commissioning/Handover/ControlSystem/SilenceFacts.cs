using System.Globalization;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Handover.ControlSystem;

/// <summary>What the drive does when the control system falls silent.</summary>
internal static class SilenceFacts
{
    public static IEnumerable<string> Of(DriveProfile profile, SettingSet held, ParameterValues values)
    {
        if (held.Choice(Setting.RunCommandSource) is { } source and not "bus")
        {
            yield return $"As it was left the drive is run from: {source}; silence on the bus stops nothing then. What follows holds once it is run from the bus.";
        }

        var (timeout, action) = (held.Number(Setting.BusTimeout), held.Choice(Setting.BusLossAction));
        yield return timeout switch
        {
            null => "No time-out of the bus is known of this drive: find out what it does when the control system falls silent.",
            0 => $"The time-out is OFF{Carried(profile, Setting.BusTimeout, values)}: when the control system falls silent the motor RUNS ON as it was last told.",
            { } seconds => string.Create(CultureInfo.InvariantCulture, $"Time-out: {seconds:0.###} s{Carried(profile, Setting.BusTimeout, values)}. After that long without a valid request {Reaction(action)}{Carried(profile, Setting.BusLossAction, values)}."),
        };
        if (timeout is > 0)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"While the motor runs write command word and reference at least every {timeout / 2:0.###} s, half the time-out, also when nothing changes (common practice, no source).");
        }

        yield return "On many drives any valid request starts the time-out anew, a reading too. Let the program that decides whether the motor may run also do the writing and the reading: a program that only reads must not keep a motor running (common practice, no source).";
    }

    private static string Reaction(string? action) => action switch
    {
        "ramp" => "the drive brings the motor down on its ramp",
        "coast" => "the drive lets the motor coast",
        "hold" => "the drive HOLDS the last reference: the motor runs on",
        "none" => "the drive does nothing: the motor RUNS ON",
        _ => "the drive's reaction is not known",
    };

    private static string Carried(DriveProfile profile, Setting setting, ParameterValues values) =>
        profile.Carrying(setting) is [var p, ..] && values[p.Number] is { } raw
            ? $" (parameter {p.Number} {p.Name} = {DisplayText.Of(p, raw, values)} {DisplayText.Unit(p, values)}".TrimEnd() + ")"
            : string.Empty;
}
