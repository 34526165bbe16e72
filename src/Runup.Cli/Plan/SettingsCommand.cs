using System.Text.Json;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Plan;
using Runup.Settings;
using Spectre.Console.Cli;

namespace Runup.Cli.Plan;

/// <summary><c>runup settings JOB</c>: make-independent settings, each with its reason.</summary>
internal sealed class SettingsCommand : Command<JobSettings>
{
    public override int Execute(Spectre.Console.Cli.CommandContext context, JobSettings settings, CancellationToken cancellationToken)
    {
        var job = LoadedJob.From(settings.Job);
        var plan = SettingsPlan.For(job.Context);
        if (settings.Json)
        {
            JsonOut.Write(json => json.ArrayValue(plan.Lines, Line));
        }
        else
        {
            var page = new Page(Console.Out);
            page.Heading($"{job.Job.Tag}  {job.Job.Title}: settings, whatever the make");
            page.Table(
                [new("setting"), new("value", Digits: true), new("unit"), new("rank"), new("reason", Whole: false)],
                plan.Lines.Select(l => (IReadOnlyList<string>)[l.Setting.Name, SettingWords.Value(l.Setting, l.Value), SettingWords.UnitInWords(l.Setting), l.Rank.Word(), $"{l.Reason} ({l.Source})"]));
        }

        return (int)ExitStatus.Fine;
    }

    private static void Line(Utf8JsonWriter json, PlannedSetting line)
    {
        json.WriteStartObject();
        json.WriteString("setting", line.Setting.Name);
        if (line.Value is SettingValue.Choice choice)
        {
            json.WriteString("value", choice.Name);
        }
        else
        {
            json.Number("value", SettingWords.InUnit(line.Setting, ((SettingValue.Number)line.Value).Si));
        }

        var unit = SettingWords.Unit(line.Setting);
        json.WriteString("unit", unit.Length == 0 ? null : unit);
        json.WriteString("rank", line.Rank.Word());
        json.WriteString("reason", line.Reason);
        json.WriteString("source", line.Source);
        json.Number("low", line.Low is { } low ? SettingWords.InUnit(line.Setting, low) : null);
        json.Number("high", line.High is { } high ? SettingWords.InUnit(line.Setting, high) : null);
        json.WriteEndObject();
    }
}
