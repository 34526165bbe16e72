using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Spectre.Console.Cli;

namespace Runup.Cli.Entry;

/// <summary><c>runup restore JOB --link LINK | --by-hand</c>: back to as found, with the same proofs as an entry.</summary>
internal sealed class RestoreCommand : AsyncCommand<LinkSettings>
{
    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, LinkSettings settings, CancellationToken cancellationToken)
    {
        var job = LoadedJob.From(settings.Job);
        if (!settings.ByHand)
        {
            _ = settings.Address;
        }

        EntrySheet sheet;
        using (var records = SiteRecords.Open(job.Folder))
        {
            var found = EntryHistory.Of(await records.Of(job.Job.Tag, cancellationToken)).AsFound;
            sheet = found.Count switch
            {
                0 => throw new Complaint(ExitStatus.BadInput, $"runup: the record of {job.Job.Tag} holds no values as found; `runup read {settings.Job} --link LINK` or `--by-hand` keeps them"),
                1 => EntrySheet.Restoring(job.Profile, found.Values.Single()),
                _ => throw new Complaint(ExitStatus.BadInput, $"runup: the record of {job.Job.Tag} holds values as found of several drives ({string.Join("; ", found.Keys)}); restore by hand from the handover"),
            };
        }

        var why = sheet.Lines.ToDictionary(l => l.Number, _ => "as it was found", StringComparer.Ordinal);
        return await EntryRun.Of(job, sheet, new Verdict([], [], []), why, settings, cancellationToken, restoring: true);
    }
}
