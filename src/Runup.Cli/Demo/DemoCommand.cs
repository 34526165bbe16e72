using System.ComponentModel;
using System.Globalization;
using Runup.Cli.Entry;
using Runup.Cli.Handover;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;
using Spectre.Console.Cli;

namespace Runup.Cli.Demo;

/// <summary><c>runup demo [DIR]</c>: the whole job on all sets of the demo site, against simulated drives over Modbus TCP, to the handovers and the site's summary.</summary>
internal sealed class DemoCommand : AsyncCommand<DemoCommand.Settings>
{
    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var begun = TimeProvider.System.GetTimestamp();
        var folder = DemoFolder.Prepare(settings.Folder);
        var jobs = LoadedJob.All([.. Directory.GetFiles(folder, "*.job.yaml").Order(StringComparer.Ordinal)]);
        var sets = jobs.OrderByDescending(j => j.Job.Tag == DemoSite.ToldInFull).Select(j => new DemoSet(j)).ToList();
        using var screen = new DemoScreen(TimeProvider.System);
        try
        {
            screen.Say(page => Begin(page, sets));
            using var records = SiteRecords.Open(folder);
            var told = await Tell(sets, screen, records, cancellationToken);
            var rows = sets.Zip(told, (set, end) => SiteFiles.Row(set.Job, end.Files)).OrderBy(r => r.Tag, StringComparer.Ordinal).ToList();
            var index = SiteFiles.Write(folder, DemoSite.Name, rows, "The drives and the people of this site are simulated.");
            screen.Say(page =>
            {
                page.Heading($"The site: {DemoSite.Name}");
                SitePage.Write(page, rows);
                page.Line($"Summary: {index}, with a link to each handover in {Path.Combine(folder, "handover")}");
                page.Line(string.Create(CultureInfo.InvariantCulture, $"It took {TimeProvider.System.GetElapsedTime(begun).TotalSeconds:0} s."));
            });
            return (int)(told.Any(t => t.HeldUp is not null) ? ExitStatus.Blocked : ExitStatus.Fine);
        }
        finally
        {
            foreach (var set in sets)
            {
                await set.DisposeAsync();
            }
        }
    }

    private static void Begin(Page page, IReadOnlyList<DemoSet> sets)
    {
        page.Line($"The whole job on invented data: the drive sets of the fish hatchery {DemoSite.Name}, with drives that are simulated and people whom this program plays. The drives' seconds run {DemoSet.LowestRate:0} to {DemoSet.HighestRate:0} times as fast as yours. Nothing real turns.");
        page.Line("These drives are served over Modbus TCP, and worked on at the same time:");
        page.Table(
            [new("set"), new("what", Whole: false), new("drive"), new("link")],
            sets.Select(s => (IReadOnlyList<string>)[s.Job.Job.Tag, s.Job.Job.Title ?? "", SiteRow.DriveOf(s.Job.Profile, s.Job.Size), s.Link]));
        page.Line("The first set is told in full, the others in short.");
    }

    /// <summary>All sets at once; the first is told as it goes on, the others one after the other once it has ended.</summary>
    private static async Task<(HandoverFiles Files, string? HeldUp)[]> Tell(IReadOnlyList<DemoSet> sets, DemoScreen screen, IRecords records, CancellationToken cancellation)
    {
        foreach (var set in sets)
        {
            screen.Follow(set.Job.Job.Tag, set.Pace);
        }

        var first = Task.Run(() => InFull(sets[0], screen, records, cancellation), cancellation);
        return await Task.WhenAll([first, .. sets.Skip(1).Select(set => Task.Run(() => InShort(set, screen, records, first, cancellation), cancellation))]);
    }

    private static async Task<(HandoverFiles Files, string? HeldUp)> InFull(DemoSet set, DemoScreen screen, IRecords records, CancellationToken cancellation)
    {
        var end = await set.Run(records, new FullStory(screen, set.Job.Job.Tag), cancellation);
        screen.Leave(set.Job.Job.Tag);
        return end;
    }

    private static async Task<(HandoverFiles Files, string? HeldUp)> InShort(DemoSet set, DemoScreen screen, IRecords records, Task first, CancellationToken cancellation)
    {
        var story = new ShortStory(set.Job);
        var end = await set.Run(records, story, cancellation);
        await first.WaitAsync(cancellation);
        screen.Leave(set.Job.Job.Tag);
        screen.Say(story.Write);
        return end;
    }

    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "[DIR]")]
        [Description("A new or empty folder; runup-demo where none is named")]
        public string? Folder { get; set; }
    }
}
