using Runup.Files.Jobs.Sections;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs;

/// <summary>Reads job files (<c>*.job.yaml</c>, see <c>docs/formats/job-file.md</c>): strictly, and all that is wrong at once.</summary>
public static class JobFile
{
    /// <summary>Reads a job file; files that it names are looked for in its folder.</summary>
    public static JobReading Read(string path)
    {
        var problems = new Problems(path);
        return TextOfFile.Read(path, YamlLimits.Bytes, problems) is { } text
            ? ReadText(text, path, FolderOf(path))
            : new JobReading.Faulty(problems.InOrder());
    }

    /// <summary>Reads the text of a job file.</summary>
    /// <param name="text">The text.</param>
    /// <param name="name">What the file is called in problems and notes.</param>
    /// <param name="folder">Folder of the files that it names; null where it may name none.</param>
    public static JobReading ReadText(string text, string name, string? folder = null)
    {
        var desk = new Desk(new Problems(name), folder, neededPart: null);
        var job = Open(text, desk) is { } map ? JobKeys.Top.Read(map, desk) : null;
        desk.AskAboutPoints();
        return job is not null && !desk.Problems.Any
            ? new JobReading.Read(job, desk.Notes, text)
            : new JobReading.Faulty(desk.Problems.InOrder());
    }

    /// <summary>Reads a file for its motor: a job file, complete or not, or one with nothing but the motor part.</summary>
    public static MotorReading ReadMotor(string path)
    {
        var problems = new Problems(path);
        return TextOfFile.Read(path, YamlLimits.Bytes, problems) is { } text
            ? ReadMotorText(text, path, FolderOf(path))
            : new MotorReading.Faulty(problems.InOrder());
    }

    /// <summary>Reads a text for its motor.</summary>
    /// <inheritdoc cref="ReadText"/>
    public static MotorReading ReadMotorText(string text, string name, string? folder = null)
    {
        var desk = new Desk(new Problems(name), folder, neededPart: "motor");
        var read = Open(text, desk) is { } map ? JobKeys.Top.ReadMotor(map, desk) : null;
        desk.AskAboutPoints();
        return read is var (motor, tag) && !desk.Problems.Any
            ? new MotorReading.Read(motor, tag, desk.Notes)
            : new MotorReading.Faulty(desk.Problems.InOrder());
    }

    private static YamlMap? Open(string text, Desk desk) =>
        YamlTree.Read(text, desk.Problems) is { } map && !VersionKey.IsNewer(map, desk) ? map : null;

    private static string FolderOf(string path) => Path.GetDirectoryName(path) ?? "";
}
