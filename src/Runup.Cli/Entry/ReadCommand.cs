using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Entry.ByHand;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Records;
using Runup.Profiles;
using Spectre.Console.Cli;

namespace Runup.Cli.Entry;

/// <summary><c>runup read JOB --link LINK | --by-hand</c>: keep the drive as found. Writes nothing.</summary>
internal sealed class ReadCommand : AsyncCommand<LinkSettings>
{
    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, LinkSettings settings, CancellationToken cancellationToken)
    {
        var job = LoadedJob.From(settings.Job);
        var links = settings.ByHand ? null : settings.LinksFor(job);
        using var records = SiteRecords.Open(job.Folder);
        using var interruption = new Interruption(cancellationToken);
        switch (links is null ? await ByHand(job, settings, records, interruption.Token) : await ReadDrive.Run(job.Job.Tag, job.Profile, links, records, interruption.Token))
        {
            case DriveRead.BrokenOff broken:
                Console.Error.WriteLine($"runup: {job.Job.Tag}: NOT FINISHED: the look at {broken.Of} parameters was stopped before its end; all so far is kept, call again to go on");
                return (int)ExitStatus.Blocked;
            case DriveRead.NoLink none:
                Console.Error.WriteLine($"runup: {job.Job.Tag}: the link failed: {none.Why}");
                return (int)ExitStatus.LinkFailed;
            case DriveRead.Read read:
                Show(job, read, settings);
                return (int)ExitStatus.Fine;
            default:
                throw new InvalidOperationException("The set of readings is closed.");
        }
    }

    private static async Task<DriveRead> ByHand(LoadedJob job, LinkSettings settings, IRecords records, CancellationToken cancellation)
    {
        var plan = SettingsPlan.For(job.Context);
        var sheet = EntrySheet.From(Profiles.Sheet.For(job.Profile, job.Size, plan.Values, ParameterValues.Defaults(job.Profile, job.Size)));
        var parameters = ToLookAt.Of(job.Profile, sheet, settings.All);
        var which = settings.All
            ? $"all {parameters.Count} parameters that it keeps"
            : $"{parameters.Count} of its {job.Profile.Parameters.Count(p => p.IsKept)} parameters, those that the sheet sets and that matter beside (--all: every one)";
        var person = settings.AtDisplay();
        person.Tell($"{job.Job.Tag} read by hand from the display of {job.Profile.Title}, size {job.Size.Name}: see that its name plate says so. Asked are {which}, in the order of its menus, what chooses units first. Answer each question with\n{PersonAtDisplay.Answers}");
        try
        {
            return await ReadByHand.Run(job.Job.Tag, job.Profile, job.Size, parameters, person, records, cancellation);
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            return new DriveRead.BrokenOff(parameters.Count);
        }
    }

    private static void Show(LoadedJob job, DriveRead.Read read, LinkSettings settings)
    {
        var values = ParameterValues.From(
            from pair in read.Values
            where pair.Value is not null
            select KeyValuePair.Create(pair.Key, pair.Value!.Value));
        var rows = job.Profile.Parameters.Where(p => read.Values.ContainsKey(p.Number)).Select(p => (Parameter: p, Raw: values[p.Number])).ToList();
        if (settings.Json)
        {
            JsonOut.Write(json =>
            {
                json.WriteStartObject();
                json.WriteString("identity", read.Identity);
                json.WriteBoolean("by_hand", settings.ByHand);
                json.Array("parameters", rows, (j, row) =>
                {
                    j.WriteStartObject();
                    j.WriteString("parameter", row.Parameter.Number);
                    j.WriteString("display", row.Raw is { } raw ? DisplayText.Of(row.Parameter, raw, values) : null);
                    j.Number("raw", row.Raw);
                    j.WriteNumber("register", row.Parameter.Register);
                    j.WriteString("setting", row.Parameter.Meaning is { } meaning ? string.Join(", ", meaning.Settings.Select(s => s.Name)) : null);
                    j.WriteEndObject();
                });
                json.WriteEndObject();
            });
            return;
        }

        var page = new Page(Console.Out);
        page.Heading($"{job.Job.Tag}: {read.Identity}, {read.Moment}");
        page.Table(
            [new("no."), new("name"), new("shows", Digits: true), new("unit"), new("factory", Digits: true)],
            rows.Select(r => (IReadOnlyList<string>)
            [
                r.Parameter.Number,
                r.Parameter.Name,
                r.Raw is { } raw ? DisplayText.Of(r.Parameter, raw, values) : "not read",
                DisplayText.Unit(r.Parameter, values) ?? "",
                DisplayText.Of(r.Parameter, job.Profile.Default(r.Parameter, job.Size, values), values),
            ]));
        var missing = rows.Count(r => r.Raw is null);
        page.Line(settings.ByHand
            ? $"{rows.Count - missing} parameters, as {settings.Person} read them from the display, are kept in the record{(missing > 0 ? $"; {missing} more were left out" : "")}."
            : $"{rows.Count - missing} parameters are kept in the record{(missing > 0 ? $"; the drive does not give {missing} more" : "")}. Nothing was written to the drive.");
    }
}
