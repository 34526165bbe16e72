using Runup.Cli.DriveProfiles;
using Runup.Cli.Entry;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Records;
using Runup.DriveLink;
using Runup.Files;
using Runup.Files.Dumps;
using Runup.Profiles;

namespace Runup.Cli.Comparison;

/// <summary>Brings the sides of a comparison to hand: from jobs and their record, files and drives.</summary>
internal static class SideLoading
{
    /// <summary>Both sides; one that does not say which drive it is of takes that of the other, or of the job named beside.</summary>
    /// <exception cref="Complaint">A side can't be had.</exception>
    internal static async Task<(Side Left, Side Right)> Both(string left, string right, string? beside, CancellationToken cancellation)
    {
        var (a, b) = (Named(left), Named(right));
        var job = beside is null ? null : LoadedJob.From(beside);
        var first = await Alone(a, cancellation);
        var second = string.Equals(left, right, StringComparison.Ordinal) ? first : await Alone(b, cancellation);
        var drive = DriveOf(job) ?? DriveOf(first) ?? DriveOf(second)
            ?? throw new Complaint(ExitStatus.BadInput, $"runup: neither '{left}' nor '{right}' says which drive it is of; --job JOB would do");
        return (first ?? await On(a, drive, cancellation), second ?? await On(b, drive, cancellation));
    }

    /// <summary>A moment of a job.</summary>
    /// <exception cref="Complaint">It was not recorded.</exception>
    internal static async Task<Side> OfJob(LoadedJob job, string moment, CancellationToken cancellation)
    {
        var factory = ParameterValues.Defaults(job.Profile, job.Size);
        switch (moment)
        {
            case "defaults":
                return Of("from the factory", factory, null);
            case "plan":
                var lines = Profiles.Sheet.For(job.Profile, job.Size, SettingsPlan.For(job.Context).Values, factory);
                return Of("as planned", Profiles.Sheet.After(job.Profile, job.Size, lines, factory), lines.Where(l => l is { Parameter: not null, Raw: not null }).Select(l => l.Parameter!.Number).ToHashSet(StringComparer.Ordinal));
            case "as-found":
                return OfThisDrive(await SiteRecords.StoryOf(job, cancellation)).AsFound is { } found
                    ? Of("as found", Known(found.Body.Values), null)
                    : throw NotRecorded(job, "as found", $"`runup read {job.Path} --link LINK` or `--by-hand` keeps them");
            default:
                var story = OfThisDrive(await SiteRecords.StoryOf(job, cancellation));
                return story is { AsLeft.Count: > 0, Entry.Begun: not null }
                    ? Of("as left", ParameterValues.From(story.AsLeft), null)
                    : throw NotRecorded(job, "as left", $"`runup enter {job.Path} --link LINK` or `--by-hand` keeps them");
        }

        // Numbers of another make would be taken for this one's.
        RecordStory OfThisDrive(RecordStory told) => told.LastRead is { } read && !ReadOf.Family(read.Body, job.Profile)
            ? throw new Complaint(ExitStatus.BadInput, $"runup: what the record of {job.Job.Tag} holds was read of another drive, {read.Body.Identity}, and the job names {job.Profile.Title}; the job as it named that drive would do, or a new reading; or, if that is how this drive answers, `identity` in its profile")
            : told;

        Side Of(string what, ParameterValues values, IReadOnlySet<string>? speaksOf) =>
            new($"{job.Job.Tag} {what}", new(job.Profile, job.Size, values) { SpeaksOf = speaksOf }, job);
    }

    private static SideText Named(string text) =>
        SideText.Read(text) ?? throw new Complaint(ExitStatus.BadInput, $"runup: '{text}' names no side of a comparison; one of these would do: {SideText.Shapes}");

    private static (DriveProfile Profile, DriveSize Size)? DriveOf(Side? side) => side is null ? null : (side.State.Profile, side.State.Size);

    private static (DriveProfile Profile, DriveSize Size)? DriveOf(LoadedJob? job) => job is null ? null : (job.Profile, job.Size);

    private static async Task<Side?> Alone(SideText side, CancellationToken cancellation) => side switch
    {
        SideText.OfJob of => await OfJob(LoadedJob.From(of.Job), of.Moment, cancellation),
        SideText.Restore restore => OfRestore(restore.File),
        _ => null,
    };

    private static async Task<Side> On(SideText side, (DriveProfile Profile, DriveSize Size) drive, CancellationToken cancellation) => side switch
    {
        SideText.Table table => OfTable(table.File, drive),
        SideText.Live live => await OfLink(live.Link, drive, cancellation),
        _ => throw new InvalidOperationException("The others say which drive they are of."),
    };

    private static Side OfRestore(string path)
    {
        var file = RestoreText.Read(File.ReadAllText(path)) switch
        {
            RestoreReading.Read read => read.File,
            RestoreReading.Altered altered => throw new Complaint(ExitStatus.BadInput, $"{path}:1:1 (file): {altered.Why}; the file as the handover wrote it would do"),
            RestoreReading.NotReadable not => throw new Complaint(ExitStatus.BadInput, $"{path}:1:1 (file): {not.Why}; a file as the handover writes it (.restore.json) would do"),
            _ => throw new InvalidOperationException("The set of readings is closed."),
        };

        // The handover lies in a folder of the site's.
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        var site = ProfileFolders.Find(folder, file.Profile) is null ? Path.GetDirectoryName(folder) ?? folder : folder;
        var profile = NamedProfile.Read(file.Profile, site, $"{path}:1:1 profile");
        var values = ParameterValues.From(file.Parameters.Select(p => KeyValuePair.Create(p.Parameter, p.Raw)));
        return new($"{file.Tag} as kept in {Path.GetFileName(path)}", new(profile, NamedProfile.Size(profile, file.Size, $"{path}:1:1 size"), values), null);
    }

    private static Side OfTable(string path, (DriveProfile Profile, DriveSize Size) drive)
    {
        var problems = new Problems(path);
        var notes = new List<FileNote>();
        var values = ValuesFile.Read(path, drive.Profile, drive.Size, problems, notes) ?? throw new Complaint(ExitStatus.BadInput, problems.InOrder().Select(p => p.ToString()));
        foreach (var note in notes)
        {
            Console.Error.WriteLine(note);
        }

        return new(Path.GetFileName(path), new(drive.Profile, drive.Size, values), null);
    }

    private static async Task<Side> OfLink(string link, (DriveProfile Profile, DriveSize Size) drive, CancellationToken cancellation)
    {
        var address = LinkText.Read(link) switch
        {
            LinkText.Address at => at.Of,
            LinkText.NotYet not => throw new Complaint(ExitStatus.BadInput, $"runup: {not.Why}"),
            LinkText.Wrong wrong => throw new Complaint(ExitStatus.BadInput, $"runup: {wrong.Why}"),
            _ => throw new InvalidOperationException("The set of link texts is closed."),
        };

        // A look for comparison is nobody's record.
        return await ReadDrive.Run(address.ToString(), drive.Profile, new ModbusDriveLinks(address, drive.Profile, TimeProvider.System), new InMemoryRecords(TimeProvider.System), cancellation) switch
        {
            DriveRead.Read read => new($"{read.Identity} at {address}", new(drive.Profile, drive.Size, Known(read.Values)), null),
            DriveRead.NoLink none => throw new Complaint(ExitStatus.LinkFailed, $"runup: the link failed: {none.Why}"),
            _ => throw new InvalidOperationException("Over a link nobody breaks off."),
        };
    }

    private static ParameterValues Known(IReadOnlyDictionary<string, long?> values) =>
        ParameterValues.From(values.Where(v => v.Value is not null).Select(v => KeyValuePair.Create(v.Key, v.Value!.Value)));

    private static Complaint NotRecorded(LoadedJob job, string what, string wouldDo) =>
        new(ExitStatus.BadInput, $"runup: the record of {job.Job.Tag} holds no values {what}; {wouldDo}");
}
