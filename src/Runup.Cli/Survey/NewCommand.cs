using System.ComponentModel;
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
        try
        {
            using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
            using var writer = new StreamWriter(file);
            writer.Write(JobTemplate.Write(tag));
        }
        catch (IOException) when (File.Exists(path))
        {
            throw new Complaint(ExitStatus.BadInput, $"{path}:1:1 (file): it is there already and is left as it is; another name would do");
        }

        var page = new Page(Console.Out);
        page.Line($"{path} is written. Fill in what stands without a comment sign, then: runup check {path}");
        return (int)ExitStatus.Fine;
    }

    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<JOB>")]
        [Description("The file to write; .job.yaml is added where it is missing")]
        public string Job { get; set; } = "";
    }
}
