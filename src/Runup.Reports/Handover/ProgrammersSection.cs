using Runup.Commissioning.Handover;
using Runup.Commissioning.Handover.ControlSystem;
using Runup.Profiles;
using Runup.Reports.Html;

namespace Runup.Reports.Handover;

/// <summary>A page of its own for whoever programs the control system.</summary>
internal static class ProgrammersSection
{
    public static void Write(HtmlWriter html, HandoverModel model) => html.In("section", "page", section =>
    {
        section.Element("h2", "9 For whoever programs the control system");
        if (model.Programmers is not { } page)
        {
            section.Element("p", "The drive's profile does not tell how it is commanded over a bus.");
            return;
        }

        section.In("p", null, line => line.Element("b", page.WhoCommands))
            .Element("p", page.IsAsLeft ? "Figures are worked out from what the drive was left with." : "Nothing was read of the drive: figures are worked out from what the sheet asks for.", "small");
        Facts(section, page.Link);
        section.Element("h3", "When the control system falls silent");
        List(section, "ul", page.Silence);
        section.Element("h3", "Registers to command it");
        Registers(section, page.Registers, examples: false);
        section.Element("h3", "To start");
        if (page.NoStart is null)
        {
            section.In("div", null, box => List(box, "ol", page.Start));
        }
        else
        {
            section.Element("p", "Not from here: its load can fall or run away with the motor. Whoever builds the machine's control answers for its start, its brake and its stop devices. What can be read, and how it is stopped, follows.");
        }

        section.Element("h3", "To stop");
        List(section, "ul", page.Stop);
        if (page.NoStart is null)
        {
            References(section, page);
        }

        Words(section, page);
        section.Element("h3", "Readings, with the motor's plate as an example");
        Registers(section, page.Readings, examples: true);
        Trips(section, page);
    });

    private static void Facts(HtmlWriter html, IReadOnlyList<(string Name, string Value)> facts) => html.In("table", "facts", table => table.In("tbody", null, body =>
    {
        foreach (var (name, value) in facts)
        {
            body.In("tr", null, row => row.Element("th", name).Element("td", value));
        }
    }));

    private static void List(HtmlWriter html, string kind, IReadOnlyList<string> items) => html.In(kind, "plain", list =>
    {
        foreach (var item in items)
        {
            list.Element("li", item);
        }
    });

    private static void Registers(HtmlWriter html, IReadOnlyList<RegisterRow> rows, bool examples) => html.In("table", "tight whole", table => table
        .Own($"<thead><tr><th>What</th><th class=\"n\">Register from 0</th><th class=\"n\">4xxxx</th><th>Form</th><th>One count</th>{(examples ? "<th>Example</th>" : string.Empty)}<th>On the drive's list</th></tr></thead>\n")
        .In("tbody", null, body =>
        {
            foreach (var r in rows)
            {
                body.In("tr", null, row =>
                {
                    row.Element("td", r.Name).Element("td", Whole(r.Register), "n").Element("td", r.Holding, "n").Element("td", r.Form).Element("td", r.CountIsWorth);
                    if (examples)
                    {
                        row.Element("td", r.Example ?? string.Empty, "code");
                    }

                    row.Element("td", r.Parameter);
                });
            }
        }));

    private static void References(HtmlWriter html, ProgrammersPage page)
    {
        html.Element("h3", "Run commands worked out");
        if (page.References.Count == 0)
        {
            html.Element("p", "None can be worked out with what is known of the drive.");
            return;
        }

        html.In("table", "tight whole", table => table
            .Own("<thead><tr><th>Asked for</th><th class=\"n\">Reference</th><th class=\"n\">Counts</th><th>In the registers</th><th>Modbus request, from the function code on, in hex</th></tr></thead>\n")
            .In("tbody", null, body =>
            {
                foreach (var example in page.References)
                {
                    body.In("tr", null, row => row
                        .Element("td", $"{Numbers.Of(example.Frequency.Hertz, "Hz")}{(example.Rotation == Rotation.Reverse ? " in reverse" : string.Empty)}")
                        .Element("td", example.Display, "n").Element("td", Whole(example.Raw), "n").Element("td", example.Words, "code")
                        .In("td", "code", cell => Lines(cell, example.Requests)));
                }
            }))
            .Element("p", "What the reference can't say exactly is rounded down. Where there are two requests, they go out in this order.", "small");
    }

    private static void Words(HtmlWriter html, ProgrammersPage page)
    {
        html.Element("h3", "Command word");
        if (page.IsWide)
        {
            html.Element("p", "Of the 32 bits of command and status word the upper 16 are 0.", "small head");
        }

        Pairs(html, page.CommandWords.Select(w => (w.Word, $"{w.Name}: {w.Meaning}")));
        Pairs(html, page.CommandBits.Select(b => ($"bit {Whole(b.Bit)}", b.Meaning)));
        html.Element("h3", "Status word");
        Pairs(html, page.StatusWords.Select(w => (w.Word, $"{w.Name}: {w.Meaning}")));
        Pairs(html, page.StatusBits.Select(b => ($"bit {Whole(b.Bit)}", b.Meaning)));
    }

    private static void Trips(HtmlWriter html, ProgrammersPage page)
    {
        if (page.Trips.Count > 0)
        {
            html.Element("h3", "Codes of trips");
            Pairs(html, page.Trips);
        }
    }

    private static void Pairs(HtmlWriter html, IEnumerable<(string Key, string Meaning)> pairs) => html.In("ul", "many small pairs", list =>
    {
        foreach (var (key, meaning) in pairs)
        {
            list.In("li", null, item => item.Element("b", key).Text($" {meaning}"));
        }
    });

    private static void Lines(HtmlWriter html, IReadOnlyList<string> lines)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            html.Own(i == 0 ? string.Empty : "<br/>").Text(lines[i]);
        }
    }

    private static string Whole(long number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
