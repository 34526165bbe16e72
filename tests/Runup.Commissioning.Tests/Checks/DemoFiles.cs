using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Files;
using Runup.Files.Jobs;
using Runup.Files.Profiles;
using Runup.Profiles;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>The demo's job files and the invented make that they name.</summary>
internal static class DemoFiles
{
    private static readonly Lazy<DriveProfile> TernProfile = new(() => Make("tern"));
    private static readonly Lazy<DriveProfile> OspreyProfile = new(() => Make("osprey"));

    internal static DriveProfile Tern => TernProfile.Value;

    internal static DriveProfile Osprey => OspreyProfile.Value;

    /// <summary>The job files of the demo site.</summary>
    internal static IReadOnlyList<string> Site =>
        [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "demo", "ostrevad"), "*.job.yaml").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];

    internal static DriveProfile ProfileOf(Job job) => job.Drive.Profile.Value == "tern" ? Tern : Osprey;

    internal static JobContext Context(params string[] path)
    {
        var job = Job(path);
        return JobContext.For(job, ProfileOf(job).FindSize(job.Drive.Size.Value)!.Rating);
    }

    internal static DriveSize TernSize(string name) => Tern.FindSize(name) ?? throw new InvalidOperationException(name);

    internal static Job Job(params string[] path) => JobFile.Read(Path.Combine([AppContext.BaseDirectory, "demo", "ostrevad", .. path])) switch
    {
        JobReading.Read read => read.Job,
        JobReading.Faulty faulty => throw new InvalidOperationException(string.Join(Environment.NewLine, faulty.Problems)),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static DriveProfile Make(string name)
    {
        var problems = new Problems(name);
        return ProfileReader.ReadFile(Path.Combine(AppContext.BaseDirectory, "data", "drives", name + ProfileReader.Extension), problems)
            ?? throw new InvalidOperationException(string.Join(Environment.NewLine, problems.InOrder()));
    }

    internal static Job Text(string text) => JobFile.ReadText(text, "test.job.yaml") switch
    {
        JobReading.Read read => read.Job,
        JobReading.Faulty faulty => throw new InvalidOperationException(string.Join(Environment.NewLine, faulty.Problems)),
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
