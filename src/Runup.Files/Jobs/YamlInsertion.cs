using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs;

/// <summary>Finds where a key that is missing belongs: behind its predecessor in the table of keys, in the style of its surroundings.</summary>
internal static class YamlInsertion
{
    internal static SpanChange? Make(string text, YamlMap root, KeyPath path, string value, Problems problems)
    {
        if (path.Steps.Any(s => s is not string))
        {
            problems.Add(Place.First, path.ToString(), "there is no such entry", "add entries to a list by hand");
            return null;
        }

        // The deepest part of the path that is there; the rest is made.
        var depth = path.Steps.Count - 1;
        while (path.Find(root, depth) is null)
        {
            depth--;
        }

        var missing = path.Steps.Skip(depth).Cast<string>().ToList();
        var order = OrderAt([.. path.Steps.Take(depth).Cast<string>()]);
        switch (path.Find(root, depth))
        {
            case YamlMap { IsFlow: true } flow:
                return InBraces(text, flow, order, Braced(missing, value));
            case YamlMap { Entries.Count: > 0 } block:
                return InLines(text, block, order, missing, value);
            case YamlScalar { IsEmpty: true } heading when heading.Place.Start == heading.Place.End:
                return BeneathHeading(text, heading, missing, value);
            case var other:
                problems.Add(other!, other!.Described, "a group of keys would have to stand here");
                return null;
        }
    }

    private static List<string> OrderAt(IReadOnlyList<string> steps)
    {
        Section? section = JobKeys.Top;
        foreach (var step in steps)
        {
            section = section?.Keys.FirstOrDefault(k => k.Name == step)?.Section;
        }

        return section is null ? ["value", "from", "error", "note"] : [.. section.Keys.Select(k => k.Name)];
    }

    // The last entry that the table puts before the new key; null where it becomes the first.
    private static YamlEntry? Predecessor(YamlMap map, List<string> order, string key)
    {
        var place = order.IndexOf(key);
        return place < 0 ? map.Entries[^1] : map.Entries.LastOrDefault(e => order.IndexOf(e.Key) is var i && i >= 0 && i < place);
    }

    private static SpanChange InBraces(string text, YamlMap map, List<string> order, string entry)
    {
        if (map.Entries.Count == 0)
        {
            var open = text.IndexOf('{', map.Place.Start) + 1;
            return new SpanChange(open, open, entry);
        }

        if (Predecessor(map, order, entry[..entry.IndexOf(':', StringComparison.Ordinal)]) is { } before)
        {
            var end = EndOf(before.Value);
            return new SpanChange(end, end, ", " + entry);
        }

        var first = map.Entries[0].Value.KeyPlace.Start;
        return new SpanChange(first, first, entry + ", ");
    }

    private static SpanChange InLines(string text, YamlMap map, List<string> order, List<string> missing, string value)
    {
        var indent = new string(' ', map.Entries[0].Value.KeyPlace.Column - 1);
        var newLine = NewLineOf(text);
        var lines = string.Join(newLine, Lines(missing, value, indent));
        if (Predecessor(map, order, missing[0]) is { } before)
        {
            var end = EndOfLine(text, EndOf(before.Value));
            return new SpanChange(end, end, newLine + lines);
        }

        var first = map.Entries[0].Value.KeyPlace.Start;
        return new SpanChange(first, first, lines[indent.Length..] + newLine + indent);
    }

    private static SpanChange BeneathHeading(string text, YamlScalar heading, List<string> missing, string value)
    {
        var indent = new string(' ', heading.KeyPlace.Column + 1);
        var newLine = NewLineOf(text);
        var end = EndOfLine(text, heading.KeyPlace.End);
        return new SpanChange(end, end, newLine + string.Join(newLine, Lines(missing, value, indent)));
    }

    private static IEnumerable<string> Lines(List<string> missing, string value, string indent)
    {
        for (var i = 0; i < missing.Count; i++)
        {
            var isLast = i == missing.Count - 1;
            yield return $"{indent}{new string(' ', 2 * i)}{missing[i]}:{(isLast ? " " + YamlWriting.Scalar(value, inFlow: false) : "")}";
        }
    }

    private static string Braced(List<string> missing, string value)
    {
        var inner = $"{missing[^1]}: {YamlWriting.Scalar(value, inFlow: true)}";
        return missing.SkipLast(1).Reverse().Aggregate(inner, (entry, key) => $"{key}: {{{entry}}}");
    }

    // The parser ends a map in lines where the next thing begins; what counts is where its last value ends.
    private static int EndOf(YamlNode node) => node switch
    {
        YamlMap { IsFlow: false, Entries.Count: > 0 } map => EndOf(map.Entries[^1].Value),
        YamlList { IsFlow: false, Items.Count: > 0 } list => EndOf(list.Items[^1]),
        YamlScalar { IsEmpty: true } scalar when scalar.Place.Start == scalar.Place.End => scalar.KeyPlace.End,
        _ => node.Place.End,
    };

    private static int EndOfLine(string text, int from)
    {
        // A block scalar ends behind its last line break.
        if (from > 0 && text[from - 1] == '\n')
        {
            from -= from > 1 && text[from - 2] == '\r' ? 2 : 1;
        }

        var end = text.AsSpan(from).IndexOfAny('\r', '\n');
        return end < 0 ? text.Length : from + end;
    }

    private static string NewLineOf(string text) => text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
}
