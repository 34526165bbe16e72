using System.Globalization;
using Runup.Commissioning.Handover;
using Runup.Reports.Html;

namespace Runup.Reports.Handover;

/// <summary>The drive's own parameters: what differs from the factory or was changed first, the rest in short.</summary>
internal static class ParametersSection
{
    public static void Write(HtmlWriter html, HandoverModel model)
    {
        html.Element("h2", "4 Parameters of the drive");
        Proof(html, model);
        var notable = model.Parameters.Where(IsNotable).ToList();
        var known = model.Parameters.Where(p => !IsNotable(p)).ToList();
        html.Element("h3", string.Create(CultureInfo.InvariantCulture, $"Changed, or other than from the factory: {notable.Count}"));
        if (notable.Count > 0)
        {
            Table(html, notable);
        }

        if (known.Count > 0)
        {
            html.Element("h3", string.Create(CultureInfo.InvariantCulture, $"At the factory's value, found and left so: {known.Count}"))
                .In("ul", "many small", list =>
                {
                    foreach (var p in known)
                    {
                        list.Element("li", $"{p.Number} {p.Name}: {p.AsLeft}");
                    }
                });
        }
    }

    private static bool IsNotable(ParameterRow p) => p.DiffersFromDefault || p.IsChanged || p.Wanted is not null || p.Written is not null;

    private static void Proof(HtmlWriter html, HandoverModel model)
    {
        var entry = model.Story.Entry;
        html.In("table", "facts", table => table.In("tbody", null, body =>
        {
            Line("Found", model.Story.AsFound is { } found ? $"{Numbers.Of(found.Time)}, {Count(found.Body.Values.Count)}; the drive answers as {found.Body.Identity}" : "The drive was not read before it was written to.");
            Line("Entered", entry.Begun is { } begun ? $"begun {Numbers.Of(begun)}{(entry.Ended is { } ended ? $", ended {Numbers.Of(ended.Time)}: {Count(ended.Body.Verified)} verified by read-back, {ended.Body.Failed.Count} not" : ", not ended")}{Resumed(entry)}" : "nothing");
            Line("Told to keep", entry.Stored ?? "not asked");
            Line("Power cycle", entry.PowerCycled is { } cycled ? $"seen {Numbers.Of(cycled)}{(entry.Ended is { Body.ProvedAfterPowerCycle: true } ? "; all read again after it" : "")}" : "not seen");
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
                    .In("td", "n", cell => cell.Element("b", p.AsLeft ?? "NOT KNOWN"))
                    .In("td", "keep", cell => cell.Proof(p.Written)));
                if (p.DiffersFromSheet)
                {
                    body.Own("<tr><td></td>").Own("<td colspan=\"5\">").Text($"The sheet says {p.Wanted}.").Own("</td></tr>\n");
                }
            }
        }));

    private static string Resumed(EntryStory entry) => entry.Resumed > 0 ? string.Create(CultureInfo.InvariantCulture, $"; cut off and resumed {entry.Resumed} times") : string.Empty;

    private static string Count(int parameters) => string.Create(CultureInfo.InvariantCulture, $"{parameters} parameters");
}
