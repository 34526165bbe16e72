using System.ComponentModel;
using System.Globalization;
using System.Text.Json;
using Runup.Cli.Plan;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Sheet;
using Runup.Profiles;
using Spectre.Console.Cli;

namespace Runup.Cli.Sheet;

/// <summary><c>runup sheet JOB</c>: the settings in this drive's own parameters, in order of entry.</summary>
internal sealed class SheetCommand : Command<SheetCommand.Settings>
{
    public override int Execute(Spectre.Console.Cli.CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var job = LoadedJob.From(settings.Job);
        var rows = JobSheet.For(SettingsPlan.For(job.Context), job.Profile, job.Size, ParameterValues.Defaults(job.Profile, job.Size), settings.All);
        if (settings.Must)
        {
            rows = [.. rows.Where(r => r.Rank == Rank.Must)];
        }

        if (settings.Json)
        {
            JsonOut.Write(json => json.ArrayValue(rows, Row));
        }
        else
        {
            Show(job, rows);
        }

        return (int)ExitStatus.Fine;
    }

    private static void Row(Utf8JsonWriter json, SheetRow row)
    {
        var line = row.Line;
        json.WriteStartObject();
        json.WriteNumber("order", line.Order);
        json.WriteString("parameter", line.Parameter?.Number);
        json.WriteString("name", line.Parameter?.Name);
        json.WriteString("display", line.Display);
        json.WriteString("unit", line.Unit);
        json.Number("raw", line.Raw);
        json.Number("register", line.Parameter?.Register);
        json.WriteString("default_display", line.DefaultDisplay);
        json.WriteBoolean("changed", line.Changed);
        json.WriteString("setting", line.Settings.Count == 0 ? null : string.Join(", ", line.Settings.Select(s => s.Name)));
        json.WriteString("mapping", line.Mapping?.Name());
        json.WriteString("rank", row.Rank?.Word());
        json.WriteString("reason", row.Reason);
        json.WriteEndObject();
    }

    private static void Show(LoadedJob job, IReadOnlyList<SheetRow> rows)
    {
        var page = new Page(Console.Out);
        page.Heading($"{job.Job.Tag}  {job.Job.Title}: sheet for {job.Profile.Title}, size {job.Size.Name}");
        page.Table(
            [new("", Digits: true), new("no."), new("name"), new("shows", Digits: true), new("unit"), new("factory", Digits: true), new("rank"), new("reason", Whole: false)],
            rows.Where(r => r.Line.Parameter is not null).Select(r => (IReadOnlyList<string>)
            [
                r.Line.Order.ToString(CultureInfo.InvariantCulture),
                r.Line.Parameter!.Number,
                r.Line.Parameter.Name,
                r.Line.Display ?? "choose",
                r.Line.Unit ?? "",
                r.Line.DefaultDisplay ?? "",
                r.Rank?.Word() ?? "",
                r.Reason ?? "",
            ]));
        var none = rows.Where(r => r.Line.Parameter is null).ToList();
        if (none.Count > 0)
        {
            page.Heading("This drive has no parameter for");
            page.Table(
                [new("setting"), new("rank"), new("reason", Whole: false)],
                none.Select(r => (IReadOnlyList<string>)[string.Join(", ", r.Line.Settings.Select(s => s.Name)), r.Rank?.Word() ?? "", r.Reason ?? ""]));
        }

        page.Line();
        page.Line("Enter from top to bottom: what others depend on comes first, what can start the motor last. Then store, switch off and on, and look again.");
    }

    internal sealed class Settings : JobSettings
    {
        [CommandOption("--must")]
        [Description("Only what the set cannot do without")]
        public bool Must { get; set; }

        [CommandOption("--all")]
        [Description("Every parameter, also those that the job leaves alone")]
        public bool All { get; set; }
    }
}
