namespace Runup.Reports.Html;

/// <summary>One HTML file that needs nothing else, neither network nor script.</summary>
internal static class HtmlPage
{
    private const string PaperFont = "font: 8pt \"Liberation Sans\", Arial, \"Segoe UI\", sans-serif; color: #555;";

    /// <summary>The page.</summary>
    /// <param name="title">What a browser calls it.</param>
    /// <param name="style">Its style sheets.</param>
    /// <param name="body">What it shows.</param>
    public static string Write(string title, string style, Action<HtmlWriter> body) => new HtmlWriter()
        .Own("<!DOCTYPE html>\n<html lang=\"en\">\n")
        .In("head", null, head => head
            .Own("<meta charset=\"utf-8\"/>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n")
            .Own("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:\"/>\n")
            .Element("title", title)
            .Own($"<style>\n{style}</style>\n"))
        .In("body", null, body)
        .Own("</html>\n")
        .ToString();

    /// <summary>The rule of style for sheets of paper, each of which names its set, so that sheets that were parted find one another.</summary>
    /// <param name="size">Margins, and the way it lies where that matters.</param>
    /// <param name="foot">What stands at the foot, beside the page's number.</param>
    public static string Paper(string size, string foot) =>
        $"@page {{ {size} @bottom-left {{ content: \"{Escape.Css(foot)}\"; {PaperFont} }} @bottom-right {{ content: \"page \" counter(page) \" of \" counter(pages); {PaperFont} }} }}\n";

    /// <summary>A style sheet of ours.</summary>
    public static string Style(string name)
    {
        using var stream = typeof(HtmlPage).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
