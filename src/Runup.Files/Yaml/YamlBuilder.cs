using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Runup.Files.Yaml;

/// <summary>Builds the positioned tree from the parser's events.</summary>
internal sealed class YamlBuilder
{
    private readonly Problems problems;
    private readonly Scanner scanner;
    private readonly Parser parser;
    private readonly int shift;
    private int nodes;
    private bool tooMuch;

    internal YamlBuilder(string text, Problems problems)
    {
        this.problems = problems;
        // The parser skips a byte-order mark without counting it; spans count every character.
        shift = text.StartsWith('\uFEFF') ? 1 : 0;
        scanner = new Scanner(new StringReader(text[shift..]), skipComments: true);
        parser = new Parser(scanner);
    }

    /// <summary>How far the parser has come, for when it fails without saying where.</summary>
    internal Place Reached => At(scanner.CurrentPosition, scanner.CurrentPosition);

    internal YamlNode? Document()
    {
        parser.Consume<StreamStart>();
        if (parser.TryConsume<StreamEnd>(out _))
        {
            return null;
        }

        var start = parser.Consume<DocumentStart>();
        if (start.Version is not null || start.Tags?.Any(t => t.Handle is not ("!" or "!!")) == true)
        {
            Refuse(start, "", "a YAML directive", "leave out lines that begin with `%`");
        }

        var root = Node("", null, 0);
        if (tooMuch)
        {
            return null;
        }

        parser.Consume<DocumentEnd>();
        if (parser.Current is DocumentStart second)
        {
            Refuse(second, "", "a second document in one file", "one file holds one; leave out the line `---`");
        }

        return tooMuch ? null : root;
    }

    private YamlNode? Node(string path, Place? key, int depth)
    {
        if (tooMuch)
        {
            return null;
        }

        if (depth > YamlLimits.Depth || ++nodes > YamlLimits.Nodes)
        {
            tooMuch = true;
            var (found, wouldDo) = depth > YamlLimits.Depth
                ? ($"groups nested more than {YamlLimits.Depth} deep", "a file of this kind has a few levels")
                : ($"more than {YamlLimits.Nodes} values", "a file of this kind is far smaller");
            Refuse(parser.Current!, path, found, wouldDo);
            return null;
        }

        switch (parser.Current)
        {
            case AnchorAlias alias:
                parser.MoveNext();
                Refuse(alias, path, $"the alias `*{alias.Value}`", "write the value out; text that begins with `*` needs quotes");
                return null;
            case Scalar scalar:
                parser.MoveNext();
                RefuseProperties(scalar, path);
                RefuseHidden(scalar, path);
                var place = At(scalar.Start, scalar.End);
                return new YamlScalar(path, key ?? place, place, scalar.Value, scalar.Style == ScalarStyle.Plain);
            case MappingStart map:
                return Map(map, path, key, depth);
            case SequenceStart list:
                return List(list, path, key, depth);
            default:
                throw new YamlException(parser.Current?.Start ?? Mark.Empty, parser.Current?.End ?? Mark.Empty, "unexpected end");
        }
    }

    private YamlMap Map(MappingStart start, string path, Place? key, int depth)
    {
        parser.MoveNext();
        RefuseProperties(start, path);
        var entries = new List<YamlEntry>();
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        while (parser.Current is not MappingEnd && !tooMuch)
        {
            if (Node(path, null, depth + 1) is not YamlScalar name)
            {
                if (tooMuch)
                {
                    break;
                }

                Refuse(parser.Current!, path, "a key that is not a word", "each line is `key: value`");
                Node(path, null, depth + 1);
                continue;
            }

            var shown = name.Text.Length == 0 ? "\"\"" : Quote.Shown(name.Text);
            var childPath = path.Length == 0 ? shown : $"{path}.{shown}";
            var value = Node(childPath, name.Place, depth + 1);
            if (!seen.TryAdd(name.Text, name.Place.Line))
            {
                problems.Add(name.Place, childPath, $"the key stands twice, first in line {seen[name.Text]}", "keep one of the two");
            }
            else if (start.Style == MappingStyle.Flow && entries.Count > 0 && JoinAtComma(entries[^1], name, value) is { } joined)
            {
                entries[^1] = joined;
            }
            else if (value is not null)
            {
                entries.Add(new YamlEntry(name.Text, value));
            }
        }

        var place = Close(start);
        return new YamlMap(path, key ?? place, place, start.Style == MappingStyle.Flow, entries);
    }

    // {output: 7,5 kW} is, to YAML, an output of 7 and a key named 5 kW.
    private YamlEntry? JoinAtComma(YamlEntry before, YamlScalar name, YamlNode? value)
    {
        if (value is not YamlScalar { IsEmpty: true }
            || name is not { IsPlain: true, Text: [>= '0' and <= '9', ..] }
            || before.Value is not YamlScalar { IsPlain: true, Text: [.., >= '0' and <= '9'] } number)
        {
            return null;
        }

        var text = $"{number.Text},{name.Text}";
        problems.Add(number, $"{Quote.Of(text)} in braces, where a comma ends a value", "a decimal point would do, or the value in quotes");
        return new YamlEntry(before.Key, new YamlScalar(number.KeyPath, number.KeyPlace, number.Place with { End = name.Place.End }, text, isPlain: true));
    }

    private YamlList List(SequenceStart start, string path, Place? key, int depth)
    {
        parser.MoveNext();
        RefuseProperties(start, path);
        var items = new List<YamlNode>();
        var number = 0;
        while (parser.Current is not SequenceEnd && !tooMuch)
        {
            if (Node($"{path}[{++number}]", null, depth + 1) is { } item)
            {
                items.Add(item);
            }
        }

        var place = Close(start);
        return new YamlList(path, key ?? place, place, start.Style == SequenceStyle.Flow, items);
    }

    private Place Close(ParsingEvent start)
    {
        var place = At(start.Start, parser.Current?.End ?? start.End);
        if (!tooMuch)
        {
            parser.MoveNext();
        }

        return place;
    }

    private void RefuseProperties(NodeEvent node, string path)
    {
        if (!node.Anchor.IsEmpty)
        {
            Refuse(node, path, $"the anchor `&{node.Anchor.Value}`", "write the value out where it is wanted; text that begins with `&` needs quotes");
        }

        if (!node.Tag.IsEmpty)
        {
            Refuse(node, path, "a YAML tag", "leave it out; text that begins with `!` needs quotes");
        }
    }

    // In double quotes an escape brings in what the text itself may not hold.
    private void RefuseHidden(Scalar scalar, string path)
    {
        if (scalar.Style == ScalarStyle.DoubleQuoted && YamlCharacters.FirstUnfit(scalar.Value) is { } unfit)
        {
            Refuse(scalar, path, $"an escape for {unfit}", "leave it out");
        }
    }

    private void Refuse(ParsingEvent at, string path, string found, string wouldDo) =>
        problems.Add(At(at.Start, at.End), path.Length == 0 ? FileProblem.WholeFile : path, found, wouldDo);

    private Place At(Mark start, Mark end) =>
        new((int)start.Line, (int)start.Column, (int)start.Index + shift, (int)end.Index + shift);
}
