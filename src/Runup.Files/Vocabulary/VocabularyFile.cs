using System.Globalization;
using Runup.Files.Yaml;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Files.Vocabulary;

/// <summary>Reads the trade's vocabulary (<c>data/vocabulary.yaml</c>).</summary>
public static class VocabularyFile
{
    private const double LightWeight = 0.12;
    private const double WeakWeight = 0.6;
    private const string Each = "<n>";

    /// <summary>Reads a file; null with problems where it is none.</summary>
    public static TradeVocabulary? ReadFile(string path, Problems problems) =>
        YamlTree.ReadFile(path, problems) is { } root ? Read(root, problems) : null;

    /// <summary>Reads a text; null with problems where it is none.</summary>
    public static TradeVocabulary? Read(string text, Problems problems) =>
        YamlTree.Read(text, problems) is { } root ? Read(root, problems) : null;

    private static TradeVocabulary? Read(YamlMap root, Problems problems)
    {
        var before = problems.Count;
        var file = new MapReader(root, problems);
        file.Whole("vocabulary", 1, 1, "`vocabulary: 1` would do; is this a vocabulary?");
        var words = Words(file);
        var meanings = new List<TradeMeaning>();
        foreach (var entry in file.Group("settings", "the settings with their phrases would do")?.Map.Entries ?? [])
        {
            Settings(entry, problems, meanings);
        }

        foreach (var entry in file.Group("others")?.Map.Entries ?? [])
        {
            if (entry.Value.AsGroup(problems) is { } map)
            {
                meanings.Add(Meaning(map, entry.Key, null, null));
                map.Done();
            }
        }

        var objects = (file.Group("objects")?.Map.Entries ?? []).Select(e => Object(e, problems)).OfType<TradeObject>().ToList();
        var families = (file.Group("families")?.Map.Entries ?? []).ToDictionary(e => e.Key, e => Family(e, problems), StringComparer.Ordinal);
        file.Done();
        return problems.Count == before ? new TradeVocabulary(words, meanings) { Objects = objects, Families = families } : null;
    }

    private static IReadOnlyList<Setting> Family(YamlEntry entry, Problems problems)
    {
        var names = Texts(entry.Value, problems);
        foreach (var name in names.Where(n => Setting.Find(n) is null))
        {
            problems.Add(entry.Value.KeyPlace, entry.Value.KeyPath, $"there is no setting {Quote.Of(name)}", "a name of the vocabulary of settings would do");
        }

        return [.. names.Select(Setting.Find).OfType<Setting>()];
    }

    private static TradeObject? Object(YamlEntry entry, Problems problems)
    {
        if (entry.Value.AsGroup(problems) is not { } map)
        {
            return null;
        }

        var name = map.Text("name", "the object's name would do") ?? "";
        var unit = map.Text("unit") ?? "";
        var access = map.Text("access") switch { null => (ParameterAccess?)null, "command" => ParameterAccess.Command, "read-only" => ParameterAccess.ReadOnly, "action" => ParameterAccess.Action, _ => ParameterAccess.StoppedOnly };
        map.Done();
        return new TradeObject(entry.Key, name, unit, access);
    }

    private static List<TradeWord> Words(MapReader file)
    {
        var problems = file.Problems;
        var light = Texts(file, "light").ToHashSet(StringComparer.Ordinal);
        var weak = Texts(file, "weak").ToHashSet(StringComparer.Ordinal);
        var spoilers = Texts(file, "spoilers").ToHashSet(StringComparer.Ordinal);
        var near = (file.Group("near")?.Map.Entries ?? []).ToDictionary(e => e.Key, e => Texts(e.Value, problems), StringComparer.Ordinal);
        var words = new List<TradeWord>();
        foreach (var entry in file.Group("words", "the words with their spellings would do")?.Map.Entries ?? [])
        {
            var weight = light.Contains(entry.Key) ? LightWeight : weak.Contains(entry.Key) ? WeakWeight : 1;
            words.Add(new TradeWord(entry.Key, Texts(entry.Value, problems), weight, spoilers.Contains(entry.Key)) { Near = near.GetValueOrDefault(entry.Key, []) });
        }

        words.AddRange(light.Where(l => words.TrueForAll(w => !string.Equals(w.Name, l, StringComparison.Ordinal))).Select(l => new TradeWord(l, [], LightWeight, false)).ToList());
        foreach (var unknown in weak.Concat(spoilers).Concat(near.Keys).Where(n => words.TrueForAll(w => !string.Equals(w.Name, n, StringComparison.Ordinal))))
        {
            problems.AddForFile($"{Quote.Of(unknown)} is none of the words", "add it under `words`");
        }

        return words;
    }

    private static void Settings(YamlEntry entry, Problems problems, List<TradeMeaning> meanings)
    {
        if (entry.Value.AsGroup(problems) is not { } map)
        {
            return;
        }

        var numbers = map.List("n").Select(n => n.AsWhole(1, 99, problems)).OfType<int>().Select(n => n.ToString(CultureInfo.InvariantCulture)).ToList();
        foreach (var number in numbers.Count > 0 ? numbers : [""])
        {
            var name = entry.Key.Replace(Each, number, StringComparison.Ordinal);
            if (Setting.Find(name) is not { } setting)
            {
                problems.Add(entry.Value.KeyPlace, entry.Value.KeyPath, $"there is no setting {Quote.Of(name)}", "a name of the vocabulary of settings would do");
                break;
            }

            meanings.Add(Meaning(map, name, setting, number));
        }

        map.Done();
    }

    private static TradeMeaning Meaning(MapReader map, string name, Setting? setting, string? number)
    {
        var alone = Texts(map, "alone");
        var numbered = map.Flag("numbered") ?? false;
        var phrases = Texts(map, "names").Select(p => p.Replace(Each, number is "1" && !numbered ? "(1)" : number, StringComparison.Ordinal));
        var choices = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal);
        foreach (var choice in map.Group("choices")?.Map.Entries ?? [])
        {
            if (setting?.Form is SettingForm.OneOf known && !known.Choices.Contains(choice.Key, StringComparer.Ordinal))
            {
                map.Problems.Add(choice.Value.KeyPlace, choice.Value.KeyPath, $"{Quote.Of(name)} has no choice {Quote.Of(choice.Key)}", Quote.List(known.Choices) + " would do");
            }

            choices[choice.Key] = Texts(choice.Value, map.Problems);
        }

        return new TradeMeaning
        {
            Name = name,
            Setting = setting,
            Phrases = [.. phrases, .. number is "1" ? alone : []],
            Dimensions = [.. Texts(map, "unit").Select(d => DimensionOf(map, d)).OfType<Dimension>()],
            Default = Band(map, "default"),
            Highest = Band(map, "high"),
            Choices = choices,
            Objects = Texts(map, "objects"),
            IsToldByChoices = map.Flag("told-by-choices") ?? false,
            IsReading = map.Flag("reading") ?? false,
        };
    }

    private static Dimension? DimensionOf(MapReader map, string name)
    {
        var dimension = Dimension.All.FirstOrDefault(d => string.Equals(d.Name, name, StringComparison.Ordinal));
        if (dimension is null)
        {
            map.Fault("unit", $"there is no dimension {Quote.Of(name)}", Quote.List(Dimension.All.Select(d => d.Name)) + " would do");
        }

        return dimension;
    }

    private static (double Low, double High)? Band(MapReader map, string key) =>
        map.List(key).Select(n => n.AsNumber(0, 1e9, map.Problems)).OfType<double>().ToList() is [var low, var high] ? (low, high) : null;

    private static IReadOnlyList<string> Texts(MapReader map, string key) => map.Node(key) is { } node ? Texts(node, map.Problems) : [];

    private static IReadOnlyList<string> Texts(YamlNode node, Problems problems) =>
        [.. (node.AsList(problems) ?? []).Select(n => n.AsText(problems, "a word")).OfType<string>()];
}
