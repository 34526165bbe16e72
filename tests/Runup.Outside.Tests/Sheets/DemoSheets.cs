using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Sheet;
using Runup.Files;
using Runup.Files.Jobs;
using Runup.Files.Profiles;
using Runup.Profiles;

namespace Runup.Outside.Tests.Sheets;

/// <summary>The sheets of the demo's jobs, each on both makes where they have its size.</summary>
internal static class DemoSheets
{
    private static readonly string Base = AppContext.BaseDirectory;

    /// <summary>File and make of each.</summary>
    internal static IEnumerable<(string File, string Make)> All =>
        from file in Directory.EnumerateFiles(Path.Combine(Base, "demo"), "*" + ".job.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
        from make in (string[])["tern", "osprey"]
        where Of(file, make, SheetExtent.Must) is not null
        select (Path.GetRelativePath(Base, file), make);

    /// <summary>The sheet; null where the job can't be read or the make has no such size.</summary>
    internal static SheetModel? Of(string file, string make, SheetExtent extent, bool wasRead = false)
    {
        if (JobFile.Read(Path.Combine(Base, file)) is not JobReading.Read { Job: var job })
        {
            return null;
        }

        var problems = new Problems(make);
        var profile = ProfileReader.ReadFile(Path.Combine(Base, "data", "drives", make + ProfileReader.Extension), problems).ShouldNotBeNull(string.Join('\n', problems.InOrder()));
        return profile.FindSize(job.Drive.Size.Value) is { } size
            ? SheetModel.Of(job, SettingsPlan.For(JobContext.For(job, size.Rating)), profile, size, extent, new DateTimeOffset(2026, 3, 1, 12, 0, 0, TimeSpan.FromHours(2)), wasRead ? new SheetFound(ParameterValues.Defaults(profile, size), DateTimeOffset.UnixEpoch) : null)
            : null;
    }
}
