using System.Text;

namespace Runup.Reports.Html;

/// <summary>Writes elements that are always closed and text that is always escaped.</summary>
internal sealed class HtmlWriter
{
    private static readonly IReadOnlySet<string> Inline = new HashSet<string>(["a", "b", "bdi", "br", "code", "em", "small", "span", "strong", "td", "th", "time"], StringComparer.Ordinal);

    private readonly StringBuilder page = new();

    /// <summary>An element with what is written in it.</summary>
    public HtmlWriter In(string name, string? style, Action<HtmlWriter> content)
    {
        Open(name, style);
        content(this);
        return Close(name);
    }

    /// <summary>An element with text.</summary>
    public HtmlWriter Element(string name, string text, string? style = null) => In(name, style, w => w.Text(text));

    /// <summary>A link to a file beside or below the page.</summary>
    public HtmlWriter Link(string file, string text)
    {
        page.Append("<a href=\"").Append(string.Join('/', file.Split('/', '\\').Select(Uri.EscapeDataString))).Append("\">");
        Text(text);
        return Close("a");
    }

    /// <summary>Text.</summary>
    public HtmlWriter Text(string text)
    {
        page.Append(Escape.Text(text));
        return this;
    }

    /// <summary>What is HTML or SVG of our own making already.</summary>
    public HtmlWriter Own(string markup)
    {
        page.Append(markup);
        return this;
    }

    /// <inheritdoc/>
    public override string ToString() => page.ToString();

    private void Open(string name, string? style)
    {
        page.Append('<').Append(name);
        if (style is not null)
        {
            page.Append(" class=\"").Append(Escape.Text(style)).Append('"');
        }

        page.Append('>');
    }

    private HtmlWriter Close(string name)
    {
        page.Append("</").Append(name).Append('>');
        if (!Inline.Contains(name))
        {
            page.Append('\n');
        }

        return this;
    }
}
