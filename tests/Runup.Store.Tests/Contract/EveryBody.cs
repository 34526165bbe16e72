using Runup.Commissioning.Records;

namespace Runup.Store.Tests.Contract;

/// <summary>One body of each kind, with what is awkward in text and numbers.</summary>
internal static class EveryBody
{
    private const string Awkward = "7,5 kW · Ω \"<b>\" \\ \n\t 漢 😀 ’";

    public static IReadOnlyList<RecordBody> All { get; } =
    [
        new RecordBody.JobTaken("tag: P-101\r\n# comment " + Awkward, new string('a', 64), "the computer's clock, not checked against a time server"),
        new RecordBody.Confirmed("no-run-command-pending", Awkward, null),
        new RecordBody.ParametersRead("as-found", "Tern 1.0", new Dictionary<string, long?>(StringComparer.Ordinal) { ["104"] = 500, ["2101h:1"] = null, ["9"] = long.MinValue }),
        new RecordBody.EntryBegun(new string('b', 64), ["104", "2101h:1"], Resumed: true),
        new RecordBody.WriteIntended("104", null, -1),
        new RecordBody.WriteEnded("104", "differs", 7, Awkward),
        new RecordBody.StoreAsked("accepted"),
        new RecordBody.PowerCycleSeen(),
        new RecordBody.EntryEnded(24, new Dictionary<string, string>(StringComparer.Ordinal) { ["107"] = "refused" }, ProvedAfterPowerCycle: false),
        new RecordBody.StepBegun("uncoupled-5hz"),
        new RecordBody.ReadingTaken("uncoupled-5hz", "output current", "A", 5.2, 0.1 + 0.2, double.PositiveInfinity, null, null),
        new RecordBody.Trend("ramp", ["time_s", "output_current_A"], [[0, 1e-300], [0.1, double.NaN]], Predicted: false),
        new RecordBody.StepEnded("ramp", "passed", null),
        new RecordBody.ControlLeft("terminals", Awkward),
        new RecordBody.HandoverWritten("P-101.handover.html", new string('c', 64)),
        new RecordBody.PhotoKept("plate " + Awkward, new string('e', 64), new string('f', 64)),
        new RecordBody.FindingAccepted("cable.peak-voltage", "caution", Awkward, Awkward, 1130.5, null, "V", Awkward, Awkward, new string('d', 64)),
        new RecordBody.ParameterSeen("as-found", "2101h:1", null, Awkward, "the panel is locked"),
    ];
}
