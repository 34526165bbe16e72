using Runup.Cli.DriveProfiles;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Files.Jobs;
using Runup.Profiles;

namespace Runup.Cli.Survey;

/// <summary>A job file with the drive that it names, ready for any step.</summary>
/// <param name="Path">The file.</param>
/// <param name="Text">Its text.</param>
/// <param name="Job">The job.</param>
/// <param name="Profile">The drive's profile.</param>
/// <param name="Size">The drive's size.</param>
internal sealed record LoadedJob(string Path, string Text, Job Job, DriveProfile Profile, DriveSize Size)
{
    private JobContext? context;

    /// <summary>What all checks know of it.</summary>
    internal JobContext Context => context ??= JobContext.For(Job, Size.Rating);

    /// <summary>The folder of the site.</summary>
    internal string Folder => System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(Path))!;

    /// <summary>Reads several jobs; what is wrong with any of them is said of all at once.</summary>
    /// <exception cref="Complaint">Anything is wrong with any file.</exception>
    internal static IReadOnlyList<LoadedJob> All(IReadOnlyList<string> paths)
    {
        var jobs = new List<LoadedJob>();
        var complaints = new List<string>();
        foreach (var path in paths)
        {
            try
            {
                jobs.Add(From(path));
            }
            catch (Complaint complaint)
            {
                complaints.Add(complaint.Message);
            }
        }

        return complaints.Count == 0 ? jobs : throw new Complaint(ExitStatus.BadInput, complaints);
    }

    /// <summary>Reads a job and its drive's profile.</summary>
    /// <exception cref="Complaint">Anything is wrong with either file.</exception>
    internal static LoadedJob From(string path)
    {
        var read = JobFile.Read(path) switch
        {
            JobReading.Read it => it,
            JobReading.Faulty faulty => throw new Complaint(ExitStatus.BadInput, faulty.Problems.Select(p => p.ToString())),
            _ => throw new InvalidOperationException("The set of readings is closed."),
        };

        var folder = System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(path))!;
        var profile = NamedProfile.Read(read.Job.Drive.Profile.Value, folder, $"{Place(path, read.Text, "profile")} drive.profile");
        profile = read.Job.Drive.Region is { } region ? NamedProfile.Region(profile, region.Value, $"{Place(path, read.Text, "region")} drive.region") : profile;
        var size = NamedProfile.Size(profile, read.Job.Drive.Size.Value, $"{Place(path, read.Text, "size")} drive.size");
        return new LoadedJob(path, read.Text, read.Job, profile, size);
    }

    /// <summary>Where a key of the drive's part stands, for a message that only the profile could give rise to.</summary>
    private static string Place(string path, string text, string key) => JobPlaces.Of(text, "drive", key) is var (line, column) ? $"{path}:{line}:{column}" : $"{path}:1:1";
}
