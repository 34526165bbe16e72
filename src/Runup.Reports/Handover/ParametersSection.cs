using System.Globalization;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;
using Runup.Reports.Html;

namespace Runup.Reports.Handover;

/// <summary>The drive's own parameters: what differs from the factory or was changed first, the rest in short.</summary>
internal static class ParametersSection
{
    public static void Write(HtmlWriter html, HandoverModel model)
    {
        html.Element("h2", "4 Parameters of the drive");
        Proof(html, model);
        if (model.Story.AsLeft.Count == 0)
        {
            html.Element("p", "What the drive holds is not known.");
            return;
        }

        var notable = model.Parameters.Where(IsNotable).ToList();
        html.Element("h3", string.Create(CultureInfo.InvariantCulture, $"On the sheet, changed, or other than from the factory: {notable.Count}"));
        if (model.Parameters.Count(IsUntouched) is > 0 and var untouched)
        {
            html.Element("p", string.Create(CultureInfo.InvariantCulture, $"The other {untouched} were left at the factory's value; they are listed at the end."), "head");
        }

        if (model.Parameters.Count(p => p.IsNotLookedAt) is > 0 and var unknown)
        {
            html.Element("p", string.Create(CultureInfo.InvariantCulture, $"{unknown} more were not looked at on the display, and nothing is known of them; they are listed at the end, too."), "head");
        }

        if (notable.Count > 0)
        {
            Table(html, notable);
        }
    }

    /// <summary>At the end, what nobody touched, so that paper holds all.</summary>
    public static void WriteUntouched(HtmlWriter html, HandoverModel model)
    {
        var untouched = model.Parameters.Where(IsUntouched).ToList();
        if (untouched.Count > 0)
        {
            html.Element("h2", "10 Parameters left at the factory's value").In("ul", "many small", list =>
            {
                foreach (var p in untouched)
                {
                    list.Element("li", $"{p.Number} {p.Name}: {p.AsLeft}");
                }
            });
        }

        var unknown = model.Parameters.Where(p => p.IsNotLookedAt).ToList();
        if (unknown.Count > 0)
        {
            html.Element("h3", "Not looked at: nothing is known of these").In("ul", "many small", list =>
            {
                foreach (var p in unknown)
                {
                    list.Element("li", $"{p.Number} {p.Name}");
                }
            });
        }
    }

    private static bool IsNotable(ParameterRow p) => !p.IsNotLookedAt && (p.DiffersFromDefault || p.IsChanged || p.Wanted is not null || p.Written is not null);

    private static bool IsUntouched(ParameterRow p) => !p.IsNotLookedAt && !IsNotable(p);

    private static string Verified(RecordBody.EntryEnded ended) => ended.VerifiedByEye is { } seen
        ? $"{Count(seen)} verified by eye on the drive's display{(ended.Verified > 0 ? $", {Count(ended.Verified)} by read-back" : "")}"
        : $"{Count(ended.Verified)} verified by read-back";

    private static void Proof(HtmlWriter html, HandoverModel model)
    {
        var entry = model.Story.Entry;
        html.In("table", "facts whole", table => table.In("tbody", null, body =>
        {
            Line("Found", model.Story.AsFound is { } found ? $"{Numbers.Of(found.Time)}, {Count(found.Body.Values.Count)}; {(found.Body.SeenBy is { } reader ? $"read from the drive's display by {reader}" : $"the drive answers as {found.Body.Identity}")}" : "The drive was not read before it was written to.");
            Line("Entered", entry.Begun is { } begun ? $"begun {Numbers.Of(begun)}{(entry.Ended is { } ended ? $", ended {Numbers.Of(ended.Time)}: {Verified(ended.Body)}, {ended.Body.Failed.Count} not" : ", not ended")}{Resumed(entry)}" : "nothing");
            Line("Told to keep", entry.Stored is StoreOutcomes.ByHand ? "by hand, on a person's word" : entry.Stored ?? "not asked");
            Line("Power cycle", entry.PowerCycled is { } cycled ? $"seen {Numbers.Of(cycled)}{(entry.Kept is { } kept ? $"; {Count(kept.Body.Values.Count)} {(kept.Body.SeenBy is { } eye ? $"seen again on the display by {eye}" : "read again")} {Numbers.Of(kept.Time)}" : "; not read again after it")}" : "not seen");
            Line("Left", model.Story.LastRead is { } left ? $"{Numbers.Of(left.Time)}, {Count(left.Body.Values.Count)} ({left.Body.Moment})" : "not read");

            void Line(string name, string value) => body.In("tr", null, row => row.Element("th", name).Element("td", value));
        }));
    }

    private static void Table(HtmlWriter html, IReadOnlyList<ParameterRow> rows) => html.In("table", "tight", table => table
        .Own("<thead><tr><th>No.</th><th>Name on the drive's list</th><th class=\"n\">From factory</th><th class=\"n\">As found</th><th class=\"n\">As left</th><th>Write</th></tr></thead>\n")
        .In("tbody", null, body =>
        {
            foreach (var p in rows)
            {
                body.In("tr", null, row => row
                    .Element("td", p.Number, "keep").Element("td", p.Name)
                    .Element("td", p.Default, "n").Element("td", p.AsFound ?? "not known", "n")
                    .In("td", "n cell", cell => Left(cell, p))
                    .In("td", "keep", cell => cell.Proof(p.Written)));
            }
        }));

    private static void Left(HtmlWriter html, ParameterRow p)
    {
        html.Element("b", p.AsLeft ?? "NOT KNOWN");
        if (p.DiffersFromSheet)
        {
            html.Element("small", $"the sheet says {p.Wanted}");
        }
    }

    private static string Resumed(EntryStory entry) => entry.Resumed > 0 ? string.Create(CultureInfo.InvariantCulture, $"; cut off and resumed {entry.Resumed} times") : string.Empty;

    private static string Count(int parameters) => string.Create(CultureInfo.InvariantCulture, $"{parameters} parameters");
}
