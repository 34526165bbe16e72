using Runup.Commissioning.Checks;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Records;
using Runup.Commissioning.Survey;
using Runup.Settings;

namespace Runup.Reports.Tests.Example;

/// <summary>A handover with the same text in every place that a person, a file or a drive can write to.</summary>
internal static class Hostile
{
    public static HandoverModel Model(string text)
    {
        var record = new ExampleRecord();
        record.Add(new RecordBody.JobTaken(text, text));
        record.Add(new RecordBody.Confirmed(text, text, text));
        record.Add(new RecordBody.Confirmed("machine-stop-tested", text, text));
        record.Add(new RecordBody.ParametersRead(text, text, new Dictionary<string, long?>(StringComparer.Ordinal) { [text] = 1, ["104"] = 99 }));
        record.Add(new RecordBody.EntryBegun(text, [text], Resumed: true));
        record.Add(new RecordBody.WriteIntended("104", 1, 2));
        record.Add(new RecordBody.WriteEnded("104", text, 3, text));
        record.Add(new RecordBody.StoreAsked(text));
        record.Add(new RecordBody.EntryEnded(1, new Dictionary<string, string>(StringComparer.Ordinal) { [text] = text }, ProvedAfterPowerCycle: false));
        record.Step(text, s =>
        {
            record.Reading(s, text, text, 1, 0, 2, 3);
            record.Add(new RecordBody.Trend(s, ["time_s", "output_current_A", text], [[0, 1, 2], [1, 2, 3]], Predicted: true));
            record.Add(new RecordBody.Trend(s, ["time_s", "output_current_A", text], [[0, 1, 2], [1, double.NaN, 3]], Predicted: false));
        }, text, text);
        record.Add(new RecordBody.ControlLeft(text, text));
        record.Add(new RecordBody.FindingAccepted(text, text, text, text, 1, 2, text, text, text, text));
        record.Add(new RecordBody.FindingAccepted("machine.hoist", text, text, text, null, null, null, text, text, text));
        var pump = ExampleJob.Pump(text);
        return HandoverModel.Of(ExampleHandover.Sources(record.All, Checks(text)) with
        {
            Context = JobContext.For(pump with
            {
                Tag = text,
                Cable = pump.Cable with { Conductor = new(text, Provenance.Told, Note: text, AsWritten: text) },
                Supply = pump.Supply with { Earthing = new(text) },
            }, ExampleDrive.Size.Rating),
            Plan = new([new(Setting.MotorRatedPower, new SettingValue.Number(1), Rank.Must, text, text)]),
            Steps = [new(text, text), new("never", text)],
            WrittenBy = text,
        });
    }

    private static CheckReport Checks(string text) => new(
        [
            new CheckResult.Satisfied(text, text),
            new CheckResult.Undecided(text, text, text),
            new CheckResult.Violated(text, Severity.Blocker, Stage.Entry, new Basis.Physics(text)) { Title = text, Explanation = text, Remedy = text, Value = 1, Limit = 2, Unit = text },
        ],
        [new(text, text, text, FromMemory: false)]);
}
