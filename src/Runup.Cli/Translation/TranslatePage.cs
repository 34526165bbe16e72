using Runup.Cli.Comparison;
using Runup.Cli.Terminal;
using Runup.Commissioning.Translation;

namespace Runup.Cli.Translation;

/// <summary>A translation for people: what needs a person first.</summary>
internal static class TranslatePage
{
    private static readonly (Fate Fate, string Heading)[] Parts =
    [
        (Fate.NeedsDecision, "Needs a decision"),
        (Fate.Required, "Asked for by the new drive, not told by the old"),
        (Fate.NotOffered, "Not offered by the new drive"),
        (Fate.Converted, "Converted"),
        (Fate.Kept, "Kept"),
    ];

    internal static void Write(Page page, Side old, DriveTranslation translation)
    {
        page.Heading($"{old.Title}: from {old.State.Profile.Title}, size {old.State.Size.Name}");
        page.Line($"to {translation.New.Profile.Title}, size {translation.New.Size.Name}");
        foreach (var (fate, heading) in Parts)
        {
            var rows = translation.Rows.Where(r => r.Fate == fate).ToList();
            if (rows.Count > 0)
            {
                page.Heading($"{heading}: {rows.Count}");
                page.Table(
                    [new("old no."), new("setting"), new("old", Digits: true), new("new no."), new("new", Digits: true), new("note", Whole: false)],
                    rows.Select(r => (IReadOnlyList<string>)[Numbers(r.Old), r.Setting?.Name ?? "-", r.OldText ?? "-", Numbers(r.New), r.NewText ?? "-", r.Note ?? ""]));
            }
        }

        page.Line();
        page.Line("Nothing is entered by this. Name the new drive in the job, look at what `runup check` says of it on this machine, and enter its sheet.");
    }

    private static string Numbers(IReadOnlyList<TranslatedParameter> parameters) => parameters.Count == 0 ? "-" : string.Join(", ", parameters.Select(p => p.Parameter.Number));
}
