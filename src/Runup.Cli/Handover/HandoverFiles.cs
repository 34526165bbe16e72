using System.Security.Cryptography;
using System.Text;
using Runup.Cli.Entry;
using Runup.Cli.FirstRun;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Records;
using Runup.Profiles;
using Runup.Reports.Handover;
using Runup.Reports.Label;

namespace Runup.Cli.Handover;

/// <summary>The files of a handover, as they were written.</summary>
/// <param name="Model">What they say.</param>
/// <param name="Report">The report.</param>
/// <param name="Restore">The file that restores the drive; null where nothing was read of it.</param>
/// <param name="Label">The label for the panel's door.</param>
internal sealed record HandoverFiles(HandoverModel Model, string Report, string? Restore, string Label)
{
    /// <summary>Writes report and restore file into the site's folder <c>handover</c>, and records their checksums.</summary>
    /// <exception cref="Complaint">The folder can't be written.</exception>
    internal static async Task<HandoverFiles> Write(LoadedJob job, IRecords records, TimeProvider time, CancellationToken cancellation, Paper paper = Paper.A4)
    {
        var model = HandoverModel.Of(await Sources(job, records, time, cancellation));
        var report = await Keep("handover.html", HandoverReport.Write(model, paper));
        var restore = model.Restore is { } file ? await Keep("restore.json", RestoreText.Write(file)) : null;
        var label = await Keep("label.svg", DoorLabel.Write(model));
        return new(model, report, restore, label);

        Task<string> Keep(string name, string text) => HandoverFiles.Keep(
            Path.Combine(job.Folder, "handover", $"{FileName(job.Job.Tag)}.{name}"), Encoding.UTF8.GetBytes(text), job.Job.Tag, records, cancellation);
    }

    private static async Task<HandoverSources> Sources(LoadedJob job, IRecords records, TimeProvider time, CancellationToken cancellation)
    {
        var photos = await HandoverPhotos.Keep(job, await records.Of(job.Job.Tag, cancellation), records, cancellation);
        var record = await records.Of(job.Job.Tag, cancellation);
        var plan = SettingsPlan.For(job.Context);
        var checks = CheckList.Judge(job.Context);
        var sheet = Profiles.Sheet.For(job.Profile, job.Size, plan.Values, ParameterValues.Defaults(job.Profile, job.Size));
        var steps = JobFirstRun.Plan(JobFirstRun.Of(job, plan, sheet, checks, new NothingPredicted()), record);
        return new()
        {
            Context = job.Context,
            JobSha256 = JobTaken.Of(job).Sha256,
            Profile = job.Profile,
            Size = job.Size,
            Checks = checks,
            Plan = plan,
            Sheet = sheet,
            Record = record,
            Photos = photos,
            Steps = [.. steps.Steps.Select(s => new PlannedStep(s.Id, s.Title)), .. PutBack(steps, record)],
            WrittenAt = time.GetLocalNow(),
            WrittenBy = $"Runup {typeof(HandoverFiles).Assembly.GetName().Version!.ToString(3)}",
        };
    }

    // Nobody plans it: it follows whenever the guided run changed a setting.
    private static IEnumerable<PlannedStep> PutBack(FirstRunPlan plan, IReadOnlyList<Recorded> record) =>
        plan.Steps.All(s => s is not FirstRunStep.AsEntered) && record.Any(r => r.Body is RecordBody.StepBegun { Step: GuidedSettings.PutBackStep })
            ? [new(GuidedSettings.PutBackStep, "The job's own settings are put back after the guided run and read back.")]
            : [];

    // First beside, then in its place: a file that is there is whole.
    internal static async Task<string> Keep(string file, ReadOnlyMemory<byte> bytes, string tag, IRecords records, CancellationToken cancellation)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            await File.WriteAllBytesAsync($"{file}.part", bytes, cancellation);
            File.Move($"{file}.part", file, overwrite: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Complaint(ExitStatus.BadInput, $"runup: {file} can't be written: {e.Message}");
        }

        await records.Append(tag, new RecordBody.HandoverWritten(Path.GetFileName(file), Convert.ToHexStringLower(SHA256.HashData(bytes.Span))), cancellation);
        return file;
    }

    // A tag may hold what no file system takes; two tags that differ only in that still have files of their own.
    private static string FileName(string tag)
    {
        var plain = string.Concat(tag.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.' ? c : '-'));
        return string.Equals(plain, tag, StringComparison.Ordinal) ? plain : $"{plain}~{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(tag)))[..6]}";
    }
}
