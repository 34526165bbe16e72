using Runup.Commissioning.Checks;
using Runup.Commissioning.Handover;
using Runup.Reports.Html;

namespace Runup.Reports.Handover;

/// <summary>A word with a shape before it, which says the same in black and white, small or dim.</summary>
internal static class Marks
{
    private const string Filled = """<circle cx="8" cy="8" r="7"/>""";
    private const string Half = """<circle cx="8" cy="8" r="6.4" fill="none" stroke="#111" stroke-width="1.8"/><path d="M8 2a6 6 0 0 1 0 12z"/>""";
    private const string Ring = """<circle cx="8" cy="8" r="6.4" fill="none" stroke="#111" stroke-width="1.8"/>""";
    private const string Square = """<rect x="1" y="1" width="14" height="14"/>""";
    private const string Triangle = """<path d="M8 .8 15.6 15H.4z"/>""";
    private const string Diamond = """<path d="M8 1.2 14.8 8 8 14.8 1.2 8z" fill="none" stroke="#111" stroke-width="1.8"/>""";

    public static HtmlWriter State(this HtmlWriter html, StageState state) => state switch
    {
        StageState.Done => html.Mark(Filled, "DONE"),
        StageState.Open => html.Mark(Half, "OPEN POINTS"),
        StageState.NotDone => html.Mark(Ring, "NOT DONE"),
        StageState.HeldUp => html.Mark(Square, "HELD UP"),
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, null),
    };

    public static HtmlWriter Weight(this HtmlWriter html, Severity severity) => severity switch
    {
        Severity.Blocker => html.Mark(Square, "BLOCKER"),
        Severity.Caution => html.Mark(Triangle, "CAUTION"),
        Severity.Note => html.Mark(Ring, "NOTE"),
        _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, null),
    };

    public static HtmlWriter Undecided(this HtmlWriter html) => html.Mark(Diamond, "UNDECIDED");

    public static HtmlWriter Outcome(this HtmlWriter html, StepStory step) => step switch
    {
        { Attempts: 0 } => html.Mark(Ring, "NOT DONE"),
        { Ended: null } => html.Mark(Triangle, "BROKEN OFF"),
        { IsPassed: true } => html.Mark(Filled, "PASSED"),
        { Ended.Outcome: "failed" } => html.Mark(Square, "FAILED"),
        { Ended.Outcome: var outcome } => html.Mark(Triangle, outcome.ToUpperInvariant()),
    };

    public static HtmlWriter Within(this HtmlWriter html, bool? within) => within switch
    {
        true => html.Mark(Filled, "within"),
        false => html.Mark(Triangle, "OUTSIDE"),
        null => html.Mark(Ring, "not judged"),
    };

    public static HtmlWriter Proof(this HtmlWriter html, string? outcome) => outcome switch
    {
        null => html,
        "verified" => html.Mark(Filled, "verified"),
        "verified-by-eye" => html.Mark(Half, "seen by eye"),
        _ => html.Mark(Triangle, outcome.ToUpperInvariant()),
    };

    private static HtmlWriter Mark(this HtmlWriter html, string shape, string word) =>
        html.In("span", "state", w => w.Own($"""<svg class="mark" viewBox="0 0 16 16" aria-hidden="true">{shape}</svg>""").Text(word));
}
