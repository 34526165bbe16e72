using System.Globalization;
using Runup.Cli.Terminal;
using Runup.Files.Listings;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Cli.DriveProfiles;

/// <summary>An imported table for a person who has to confirm it: first the columns, then each row with what it may mean.</summary>
internal static class ImportPage
{
    internal static void Write(Page page, Listing listing, IReadOnlyList<Suggestion> suggestions, MeaningScorer scorer)
    {
        if (listing.Columns.Count > 0)
        {
            page.Heading("Columns, as they were understood");
            page.Table(
                [new("column"), new("heading", Whole: false), new("taken for"), new("first cell", Whole: false)],
                listing.Columns.Select(c => (IReadOnlyList<string>)[c.Column, c.Title.ReplaceLineEndings(" "), c.Role?.Word() ?? "(not used)", Short(c.Sample, 40)]));
        }

        page.Heading("Rows, with what each may mean");
        page.Table(
            [new("no."), new("name", Whole: false), new("values", Whole: false), new("factory", Digits: true), new("in run"), new("may mean"), new("certainty", Digits: true)],
            listing.Parameters.Zip(suggestions, (row, suggestion) => (IReadOnlyList<string>)
            [
                row.Number,
                row.Name,
                Values(row, suggestion.Setting is { Form: SettingForm.OneOf } chosen && row.IsChosen ? scorer.Counterparts(row, chosen) : null),
                row.Default?.ToString(CultureInfo.InvariantCulture) ?? "",
                InRun(row.Access),
                suggestion.Setting?.Name ?? "",
                suggestion.Setting is null ? "" : suggestion.Certainty.ToString("0.00", CultureInfo.InvariantCulture),
            ]));
        Counting(page, listing.Parameters, suggestions);
        var certain = suggestions.Count(s => s is { Setting: not null, Certainty: >= Suggestion.High });
        var less = suggestions.Count(s => s.Setting is not null) - certain;
        page.Line();
        page.Line($"{listing.Parameters.Count} parameters. {certain} meanings are suggested with a certainty of {Suggestion.High.ToString(CultureInfo.InvariantCulture)} and more, {less} with less. All are guesses until you have compared them with the manual.");
    }

    private static string InRun(ParameterAccess? access) => access switch
    {
        ParameterAccess.AnyTime => "yes",
        ParameterAccess.StoppedOnly => "no",
        ParameterAccess.ReadOnly => "read only",
        ParameterAccess.Action => "action",
        ParameterAccess.Command => "command",
        _ => "",
    };

    private static void Counting(Page page, IReadOnlyList<ListedParameter> rows, IReadOnlyList<Suggestion> suggestions)
    {
        var advisor = new ConversionAdvisor(rows, suggestions);
        var lines = rows.Select((row, i) => advisor.Of(i) switch
        {
            ConversionAdvice.Declared declared => (IReadOnlyList<string>?)[row.Number, row.Name, $"{declared.Key}: {declared.Value}", declared.Because],
            ConversionAdvice.Asked asked => [row.Number, row.Name, "to ask", asked.Question],
            _ => null,
        }).OfType<IReadOnlyList<string>>().ToList();
        if (lines.Count > 0)
        {
            page.Heading("Ways of counting, to compare with the manual");
            page.Table([new("no."), new("name", Whole: false), new("proposed"), new("why", Whole: false)], lines);
        }
    }

    // Behind a choice that is called otherwise: what it stands for.
    private static string Values(ListedParameter row, IReadOnlyList<string?>? stands)
    {
        var range = row.Low is null && row.High is null ? "" : $"{Figure(row.Low)} to {Figure(row.High)}{(row.Unit.Length > 0 ? " " + row.Unit : "")}";
        var choices = Short(string.Join(", ", row.Choices.Select((c, i) => $"{c.Raw} {c.Label}{(stands is null || string.Equals(stands[i], c.Label, StringComparison.OrdinalIgnoreCase) ? "" : $" ({stands[i] ?? "?"})")}")), stands is null ? 60 : 120);
        return range.Length > 0 && choices.Length > 0 ? $"{range}; {choices}" : range + choices;
    }

    private static string Figure(decimal? value) => value?.ToString(CultureInfo.InvariantCulture) ?? "?";

    private static string Short(string text, int length)
    {
        var plain = text.ReplaceLineEndings(" ");
        return plain.Length <= length ? plain : plain[..(length - 1)] + "…";
    }
}
