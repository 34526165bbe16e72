using System.ComponentModel;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Comparison;
using Runup.Profiles;
using Spectre.Console.Cli;

namespace Runup.Cli.Comparison;

/// <summary><c>runup compare A B</c>: two states of drives side by side.</summary>
internal sealed class CompareCommand : AsyncCommand<CompareCommand.Settings>
{
    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (left, right) = await SideLoading.Both(settings.A, settings.B, settings.Job, cancellationToken);
        var comparison = StateComparison.Of(left.State, right.State);
        var set = settings.Job is { } job ? LoadedJob.From(job) : left.Job ?? right.Job;
        var consequences = set is null ? null : Consequences.Of(set.Context, comparison, cancellationToken);
        if (settings.Json)
        {
            CompareJson.Write(comparison, consequences);
        }
        else
        {
            ComparePage.Write(new Page(Console.Out), left, right, comparison, consequences, set);
        }

        return (int)(settings.FailOnDifference && comparison.Differences.Count > 0 ? ExitStatus.Blocked : ExitStatus.Fine);
    }

    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<A>")]
        [Description("One side: " + SideText.Shapes)]
        public string A { get; set; } = "";

        [CommandArgument(1, "<B>")]
        [Description("The other side, named likewise")]
        public string B { get; set; } = "";

        [CommandOption("--job <JOB>")]
        [Description("The job that says which drive it is, and for whose set consequences are worked out, where the sides do not")]
        public string? Job { get; set; }

        [CommandOption("--fail-on-difference")]
        [Description("Status 1 where anything differs")]
        public bool FailOnDifference { get; set; }

        [CommandOption("--json")]
        [Description("One JSON document on standard output")]
        public bool Json { get; set; }
    }
}
