using System.ComponentModel;
using System.Text;
using Runup.Cli.Terminal;
using Runup.Files.Jobs;
using Spectre.Console.Cli;

namespace Runup.Cli.Survey;

/// <summary><c>runup new JOB</c>: a commented job file to fill in; never over a file that is there.</summary>
internal sealed class NewCommand : Command<NewCommand.Settings>
{
    public override int Execute(Spectre.Console.Cli.CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var path = settings.Job.EndsWith(".job.yaml", StringComparison.Ordinal) ? settings.Job : settings.Job + ".job.yaml";
        if (Directory.Exists(path))
        {
            throw new Complaint(ExitStatus.BadInput, $"{path}:1:1 (file): there is a folder of this name; another name would do");
        }

        var tag = Path.GetFileName(path)[..^".job.yaml".Length].ToUpperInvariant();
        if (tag.Trim().Length == 0 || tag.Any(char.IsControl))
        {
            throw new Complaint(ExitStatus.BadInput, $"runup: '{Visible.Text(settings.Job)}' names no file; the equipment's tag, such as swp-101, would do");
        }

        using (var file = Made(path))
        {
            Fill(file, path, JobTemplate.Write(tag));
        }

        var page = new Page(Console.Out);
        page.Line($"{path} is written. Fill in what stands without a comment sign, then: runup check {path}");
        return (int)ExitStatus.Fine;
    }

    private static FileStream Made(string path)
    {
        try
        {
            return new FileStream(path, FileMode.CreateNew, FileAccess.Write);
        }
        catch (IOException) when (File.Exists(path))
        {
            throw new Complaint(ExitStatus.BadInput, $"{path}:1:1 (file): it is there already and is left as it is; another name would do");
        }
    }

    private static void Fill(FileStream file, string path, string text)
    {
        try
        {
            file.Write(Encoding.UTF8.GetBytes(text));
            file.Flush(flushToDisk: true);
        }
        catch (IOException)
        {
            // Half a file would look like one that somebody filled in.
            File.Delete(path);
            throw;
        }
    }

    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<JOB>")]
        [Description("The file to write; .job.yaml is added where it is missing")]
        public string Job { get; set; } = "";
    }
}
