using System.Globalization;
using Runup.Commissioning.Handover;
using Runup.Reports.Html;

namespace Runup.Reports.Handover;

/// <summary>Who confirmed what, where the record's chain stands, and who signs.</summary>
internal static class RecordSection
{
    public static void Write(HtmlWriter html, HandoverModel model)
    {
        html.Element("h2", "8 Record and signatures");
        Confirmations(html, model);
        Chain(html, model);
        Signatures(html);
    }

    private static void Confirmations(HtmlWriter html, HandoverModel model)
    {
        html.Element("h3", "Confirmed by name");
        if (model.Story.Confirmations.Count == 0)
        {
            html.Element("p", "Nothing is on record.");
            return;
        }

        html.In("table", "tight confirmed", table => table
            .Own("<thead><tr><th>When</th><th>What</th><th>By</th><th>Remark</th></tr></thead>\n")
            .In("tbody", null, body =>
            {
                foreach (var confirmed in model.Story.Confirmations)
                {
                    body.In("tr", null, row => row
                        .Element("td", Numbers.Of(confirmed.Time), "keep").Element("td", confirmed.Body.What.Replace('-', ' '))
                        .Element("td", confirmed.Body.By).Element("td", Remark(confirmed.Body.Note)));
                }
            }));
    }

    // "own-control-25-hz: what was said": the step in words, what was said as it was said.
    private static string Remark(string? note)
    {
        var (step, said) = note?.IndexOf(": ", StringComparison.Ordinal) is { } at and >= 0 ? (note[..at], note[at..]) : (note ?? string.Empty, string.Empty);
        return step.Replace('-', ' ').Replace(" hz", " Hz", StringComparison.Ordinal) + said;
    }

    private static void Chain(HtmlWriter html, HandoverModel model)
    {
        html.In("div", "whole", box =>
        {
            box.Element("h3", "Checksum of the record");
            if (model.Story.Head is not { } head)
            {
                box.Element("p", "Nothing was recorded of this set.");
                return;
            }

            box.Element("p", head.Hash, "hash").Element("p", string.Create(CultureInfo.InvariantCulture,
                $"This is entry {head.Sequence} of the site's record, of {Numbers.Of(head.Time)}; {head.Entries} entries are of this set, the first of {Numbers.Of(head.First)}. Each entry's checksum covers the one before it: a record in which this checksum is not found is not the one that this paper was written from. Times stand with their offset from UTC; they were kept by {model.Story.Job?.Body.Clock ?? "the computer's clock, not checked against a time server"}. In UTC this entry is of {head.Time.UtcDateTime:yyyy-MM-dd HH:mm:ss}."));
            if (model.Restore is { } restore)
            {
                box.Element("p", string.Create(CultureInfo.InvariantCulture, $"Restore file: {restore.Parameters.Count} parameters of {restore.Profile} {restore.Size}, checksum:"))
                    .Element("p", restore.Checksum, "hash");
            }
        });
    }

    private static void Signatures(HtmlWriter html) => html.In("div", "whole", box => box
        .Element("h3", "Signatures")
        .Element("p", "The open restrictions on the first page were read and are understood.")
        .In("table", "sign", table => table.In("tbody", null, body =>
        {
            foreach (var who in (string[])["Handed over by", "Taken over by"])
            {
                body.In("tr", null, row => row.Element("th", who).Element("td", string.Empty).Element("th", "Date").Element("td", string.Empty, "date").Element("th", "Signature").Element("td", string.Empty));
            }
        })));
}
