using System.Text.Json;
using Runup.Cli.Terminal;
using Runup.Files;
using Runup.Files.Profiles;
using Runup.Profiles;
using Spectre.Console.Cli;

namespace Runup.Cli.DriveProfiles;

/// <summary><c>runup profile lint PROFILE</c>: everything that is wrong with a profile, each with its line.</summary>
internal sealed class LintCommand : Command<ProfileArgument>
{
    public override int Execute(CommandContext context, ProfileArgument settings, CancellationToken cancellationToken)
    {
        var path = settings.File();
        var problems = new Problems(path);
        var cautions = new Problems(path);
        var profile = ProfileReader.LintFile(path, problems, cautions);
        if (settings.Json)
        {
            JsonOut.Write(json => Write(json, path, problems.InOrder(), cautions.InOrder()));
        }
        else
        {
            foreach (var problem in problems.InOrder())
            {
                Console.Error.WriteLine(problem.ToString());
            }

            Show(new Page(Console.Out), path, profile, cautions.InOrder());
        }

        return (int)(profile is null ? ExitStatus.BadInput : ExitStatus.Fine);
    }

    private static void Show(Page page, string path, DriveProfile? profile, IReadOnlyList<FileProblem> cautions)
    {
        if (cautions.Count > 0)
        {
            page.Heading("It can be used, but");
            foreach (var caution in cautions)
            {
                // Not broken into lines: an editor jumps to it.
                Console.Out.WriteLine(Visible.Text(caution.ToString()));
            }
        }

        if (profile is not null)
        {
            page.Line();
            page.Line($"{path} is sound: {profile.Parameters.Count} parameters, {profile.Parameters.Count(p => p.Meaning is not null)} of them with a meaning, {profile.Sizes.Count} {(profile.Sizes.Count == 1 ? "size" : "sizes")}. The values of each went through display and registers and came back.");
        }
    }

    private static void Write(Utf8JsonWriter json, string path, IReadOnlyList<FileProblem> problems, IReadOnlyList<FileProblem> cautions)
    {
        json.WriteStartObject();
        json.WriteString("file", path);
        json.Array("errors", problems, Problem);
        json.Array("cautions", cautions, Problem);
        json.WriteEndObject();
    }

    private static void Problem(Utf8JsonWriter json, FileProblem problem)
    {
        json.WriteStartObject();
        json.WriteNumber("line", problem.Line);
        json.WriteNumber("column", problem.Column);
        json.WriteString("key", problem.Key);
        json.WriteString("found", problem.Found);
        json.WriteString("would_do", problem.WouldDo);
        json.WriteEndObject();
    }
}
