using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Entry;
using Runup.Profiles;
using Spectre.Console.Cli;

namespace Runup.Cli.Entry;

/// <summary><c>runup read JOB --link LINK</c>: keep the drive as found. Writes nothing.</summary>
internal sealed class ReadCommand : AsyncCommand<LinkSettings>
{
    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, LinkSettings settings, CancellationToken cancellationToken)
    {
        var job = LoadedJob.From(settings.Job);
        var links = settings.LinksFor(job);
        using var records = SiteRecords.Open(job.Folder);
        switch (await ReadDrive.Run(job.Job.Tag, job.Profile, links, records, cancellationToken))
        {
            case DriveRead.NoLink none:
                Console.Error.WriteLine($"runup: {job.Job.Tag}: the link failed: {none.Why}");
                return (int)ExitStatus.LinkFailed;
            case DriveRead.Read read:
                Show(job, read, settings.Json);
                return (int)ExitStatus.Fine;
            default:
                throw new InvalidOperationException("The set of readings is closed.");
        }
    }

    private static void Show(LoadedJob job, DriveRead.Read read, bool asJson)
    {
        var values = ParameterValues.From(
            from pair in read.Values
            where pair.Value is not null
            select KeyValuePair.Create(pair.Key, pair.Value!.Value));
        var rows = job.Profile.Parameters.Where(p => read.Values.ContainsKey(p.Number)).Select(p => (Parameter: p, Raw: values[p.Number])).ToList();
        if (asJson)
        {
            JsonOut.Write(json =>
            {
                json.WriteStartObject();
                json.WriteString("identity", read.Identity);
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
                DisplayText.Of(r.Parameter, r.Parameter.DefaultRaw(job.Size), values),
            ]));
        var missing = rows.Count(r => r.Raw is null);
        page.Line($"{rows.Count - missing} parameters are kept in the record{(missing > 0 ? $"; the drive does not give {missing} more" : "")}. Nothing was written to the drive.");
    }
}
