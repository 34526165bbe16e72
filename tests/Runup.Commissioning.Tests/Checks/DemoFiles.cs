using Runup.Commissioning.Survey;
using Runup.Files;
using Runup.Files.Jobs;
using Runup.Files.Profiles;
using Runup.Profiles;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>The demo's job files and the invented make that they name.</summary>
internal static class DemoFiles
{
    private static readonly Lazy<DriveProfile> TernProfile = new(() =>
    {
        var problems = new Problems("tern");
        return ProfileReader.ReadFile(Path.Combine(AppContext.BaseDirectory, "data", "drives", "tern.drive.yaml"), problems)
            ?? throw new InvalidOperationException(string.Join(Environment.NewLine, problems.InOrder()));
    });

    internal static DriveProfile Tern => TernProfile.Value;

    internal static DriveSize TernSize(string name) => Tern.FindSize(name) ?? throw new InvalidOperationException(name);

    internal static Job Job(params string[] path) => JobFile.Read(Path.Combine([AppContext.BaseDirectory, "demo", "ostrevad", .. path])) switch
    {
        JobReading.Read read => read.Job,
        JobReading.Faulty faulty => throw new InvalidOperationException(string.Join(Environment.NewLine, faulty.Problems)),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    internal static Job Text(string text) => JobFile.ReadText(text, "test.job.yaml") switch
    {
        JobReading.Read read => read.Job,
        JobReading.Faulty faulty => throw new InvalidOperationException(string.Join(Environment.NewLine, faulty.Problems)),
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
