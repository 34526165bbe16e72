using System.Text;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs;

/// <summary>Writes a job file to fill in: needed lines open and marked, all others as comments with an example.</summary>
public static class JobTemplate
{
    private const int CommentColumn = 38;

    /// <summary>Writes the template.</summary>
    /// <param name="tag">The equipment tag.</param>
    /// <param name="schema">Path or address of the JSON Schema, for editors that look for it; null leaves the line out.</param>
    public static string Write(string tag, string? schema = null)
    {
        var text = new StringBuilder();
        if (schema is not null)
        {
            text.Append("# yaml-language-server: $schema=").Append(schema).Append('\n');
        }

        text.Append("""
            # Job file: one motor, its drive and its machine.
            # Lines marked * are needed. Of the others, take away the # and put your own value; what is
            # missing widens a prediction or leaves a check undecided. A job is checked as far as it goes.
            # Quantities carry their unit: 7.5 kW or 10 hp, 0.4 kg·m² or 35 lb·ft², 1460 rpm, 6 mm² or 10 AWG.
            # Any value can say where it comes from:
            #   output: {value: 7.5 kW, from: plate, error: 2 %, note: "hard to read"}
            # with from: plate, drawing, measured, told or assumed; with photo: plate.jpg the photo that shows it.

            """);
        foreach (var key in JobKeys.Top.Keys)
        {
            switch (key.Name)
            {
                case "runup":
                    Line(text, 0, $"{key.Name}: {key.Example}", key.About);
                    break;
                case "tag":
                    Line(text, 0, $"{key.Name}: {YamlWriting.Scalar(tag, inFlow: false)}", key.About);
                    break;
                default:
                    Write(text, key, 0, JobKeys.Top);
                    break;
            }
        }

        return text.ToString();
    }

    private static void Write(StringBuilder text, Key key, int indent, Section section)
    {
        if (key.Section is { } inner && (key.Need is Need.Always || indent == 0))
        {
            Line(text, indent, key.Name + ":", key.About);
            foreach (var child in inner.Keys)
            {
                Write(text, child, indent + 2, inner);
            }

            return;
        }

        var isOpen = IsOpen(key, section);
        var about = key.Words.Count is > 0 and <= 8 && !key.Words.All(w => key.About.Contains(w, StringComparison.Ordinal))
            ? $"{key.About}: {string.Join(", ", key.Words)}"
            : key.About;
        Line(text, indent, isOpen ? key.Name + ":" : $"# {key.Name}: {key.Example}", key.Need switch
        {
            Need.Always => $"* {about}, such as {key.Example}",
            Need.Conditional c when isOpen => $"* {about}, such as {key.Example} (with {c.Key} {string.Join(", ", c.Words)})",
            Need.Conditional c => $"* with {c.Key} {string.Join(", ", c.Words)}: {about}",
            _ => about,
        });
    }

    // What the example of the other key calls for stands open, the rest waits as a comment.
    private static bool IsOpen(Key key, Section section) => key.Need switch
    {
        Need.Always => true,
        Need.Conditional c => c.Words.Contains(section.Keys.First(k => k.Name == c.Key).Example, StringComparer.Ordinal),
        _ => false,
    };

    private static void Line(StringBuilder text, int indent, string content, string comment)
    {
        var start = new string(' ', indent) + content;
        text.Append(start.PadRight(CommentColumn)).Append(start.Length >= CommentColumn ? "  # " : "# ").Append(comment).Append('\n');
    }
}
