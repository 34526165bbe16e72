using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Keys;

/// <summary>One of a list of words.</summary>
/// <typeparam name="T">What the words stand for.</typeparam>
/// <param name="choices">The words.</param>
internal sealed class ChoiceForm<T>(Choices<T> choices) : Form<T>
{
    internal override string Wanted => "one of " + Quote.List(choices.Words);

    internal override IReadOnlyList<string> Words => [.. choices.Words];

    internal override bool Read(YamlScalar scalar, Desk desk, [MaybeNullWhen(false)] out T value, out double roundingSi)
    {
        roundingSi = 0;
        if (choices.TryFind(scalar.Text.Trim(), out value))
        {
            return true;
        }

        desk.Problems.Add(scalar, Quote.Of(scalar.Text), Spelling.Nearest(scalar.Text, choices.Words) is { } nearest
            ? $"`{nearest}` would do, if that is meant; {Wanted}"
            : Wanted + " would do");
        return false;
    }

    internal override JsonObject Schema() => new() { ["enum"] = new JsonArray([.. choices.Words.SelectMany(AsAnEditorMaySeeIt)]) };

    // YAML's own types get between: 3 is a number to every editor, and off is false to one that reads YAML 1.1.
    private static IEnumerable<JsonNode> AsAnEditorMaySeeIt(string word)
    {
        yield return word;
        if (int.TryParse(word, out var number))
        {
            yield return number;
        }
        else if (word is "off" or "no" or "N")
        {
            yield return false;
        }
    }
}
