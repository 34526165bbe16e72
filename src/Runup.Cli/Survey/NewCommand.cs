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
        var tag = Path.GetFileName(path)[..^".job.yaml".Length].ToUpperInvariant();
        if (tag.Trim().Length == 0 || tag.Any(char.IsControl))
        {
            throw new Complaint(ExitStatus.BadInput, $"runup: '{Visible.Text(settings.Job)}' names no file; the equipment's tag, such as swp-101, would do");
        }

        NewFile.Write(path, Encoding.UTF8.GetBytes(JobTemplate.Write(tag)));
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
