using System.ComponentModel;
using Runup.Cli.Terminal;
using Runup.Files;
using Runup.Files.Listings;
using Runup.Files.Profiles;
using Runup.Files.Vocabulary;
using Runup.Profiles;
using Spectre.Console.Cli;

namespace Runup.Cli.DriveProfiles;

/// <summary><c>runup profile import TABLE</c>: what a manual's table holds, what each row may mean, and the draft of a profile.</summary>
internal sealed class ImportCommand : Command<ImportCommand.Settings>
{
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (settings.Table is null && !Console.IsInputRedirected)
        {
            throw new Complaint(ExitStatus.BadInput, "runup: no table; name its file, or give it on standard input: runup profile import < pasted.txt");
        }

        var problems = new Problems(settings.Table ?? "(pasted)");
        var cautions = new Problems(problems.File);
        var told = new ListingOptions { Columns = ColumnOptions.Read(settings.Columns), Sheet = settings.Sheet };
        var listing = settings.Table is null
            ? ListingFile.ReadText(Console.In.ReadToEnd(), ListingKind.Pasted, told, problems, cautions)
            : ListingFile.ReadFile(settings.Table, told, problems, cautions);
        if (listing is null)
        {
            throw new Complaint(ExitStatus.BadInput, problems.InOrder().Select(p => p.ToString()));
        }

        var vocabulary = Vocabulary();
        var scorer = new MeaningScorer(vocabulary);
        listing = listing with { Parameters = StandardObjects.Complete(listing.Parameters, vocabulary) };
        var suggestions = scorer.Suggest(listing.Parameters);
        IReadOnlyList<FileProblem> found = [.. problems.InOrder(), .. cautions.InOrder()];
        if (settings.Json)
        {
            JsonOut.Write(json => ImportJson.Write(json, listing.Parameters, suggestions, found));
        }
        else
        {
            if (settings.To is null || problems.Any)
            {
                ImportPage.Write(new Page(Console.Out), listing, suggestions, scorer);
            }

            foreach (var problem in found)
            {
                Console.Error.WriteLine(problem.ToString());
            }
        }

        if (problems.Any)
        {
            return (int)ExitStatus.BadInput;
        }

        if (settings.To is { } to)
        {
            var confirmed = Confirmation.Read(settings.Confirm, listing.Parameters, suggestions);
            var path = to.EndsWith(ProfileReader.Extension, StringComparison.Ordinal) ? to : to + ProfileReader.Extension;
            var family = settings.Family ?? Path.GetFileName(path)[..^ProfileReader.Extension.Length];
            var draft = new ProfileDraft(scorer, confirmed).Write(family, Path.GetFileName(problems.File), listing.Parameters, suggestions);
            DraftFile.Save(path, draft, settings.Replace);
            var line = $"{path} is written: a draft with {confirmed.Count} confirmed meanings. Complete it as its first lines say, then: runup profile lint {path}";
            (settings.Json ? Console.Error : Console.Out).WriteLine(line);
        }
        else if (!settings.Json)
        {
            Console.Out.WriteLine();
            Console.Out.WriteLine("Nothing is written. If the columns are right, the draft comes with --to NAME; else say which is which: --column name=B.");
        }

        return (int)ExitStatus.Fine;
    }

    private static TradeVocabulary Vocabulary()
    {
        var path = Path.Combine(AppContext.BaseDirectory, "data", "vocabulary.yaml");
        var problems = new Problems(path);
        return VocabularyFile.ReadFile(path, problems) ?? throw new Complaint(ExitStatus.BadInput, problems.InOrder().Select(p => p.ToString()));
    }

    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "[TABLE]")]
        [Description("A manual's table (.csv, .xlsx, pasted text in any other file) or an EDS file (.eds); without it, text pasted on standard input")]
        public string? Table { get; set; }

        [CommandOption("--to <FILE>")]
        [Description("Write the draft of a profile to this file")]
        public string? To { get; set; }

        [CommandOption("--replace")]
        [Description("Also over a file that is there")]
        public bool Replace { get; set; }

        [CommandOption("--column <ROLE=LETTER>")]
        [Description("What a column holds, where the guess is wrong: number, sub, name, group, range, low, high, choices, unit, scale, default, access, while-running, register, type or remark; may be given several times")]
        public string[] Columns { get; set; } = [];

        [CommandOption("--sheet <NAME>")]
        [Description("The sheet of a spreadsheet; without, the fullest")]
        public string? Sheet { get; set; }

        [CommandOption("--confirm <NUMBERS>")]
        [Description("Meanings that you compared with the manual and that are right: numbers with commas between, or certain for all of 0.8 and more. All others are only kept as guesses")]
        public string? Confirm { get; set; }

        [CommandOption("--family <NAME>")]
        [Description("The family's name in job files; without, the name of the file")]
        public string? Family { get; set; }

        [CommandOption("--json")]
        [Description("One JSON document on standard output")]
        public bool Json { get; set; }
    }
}
