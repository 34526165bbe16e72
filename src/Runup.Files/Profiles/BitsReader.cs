using System.Globalization;
using Runup.Files.Yaml;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Files.Profiles;

/// <summary>Reads the bits of a value that choose settings: <c>{0: {means: phase-loss, 0: off, 1: trip}, 4-5: {...}}</c>.</summary>
internal static class BitsReader
{
    private const int Highest = 31;

    /// <summary>The meaning of the bits; null with a problem where it is wrong.</summary>
    internal static Meaning? Read(YamlMap map, Problems problems)
    {
        var before = problems.Count;
        var fields = new List<BitField>();
        foreach (var entry in map.Entries)
        {
            if (Place(entry.Key) is not var (first, last))
            {
                problems.Add(entry.Value.KeyPlace, entry.Value.KeyPath, $"{Quote.Of(entry.Key)} names no bits", "a bit from `0` to `31`, or several such as `4-5`, would do");
            }
            else if (entry.Value.AsGroup(problems) is { } group && Field(group, first, last) is { } field)
            {
                fields.Add(field);
            }
        }

        return problems.Count > before || fields.Count == 0 ? null : new Meaning.Bits(fields);
    }

    private static BitField? Field(MapReader group, int first, int last)
    {
        var settings = group.Node("means", "the setting that these bits choose would do") is null ? null : MeaningReader.Settings(group);
        var setting = settings is [var only] ? only : null;
        if (settings is { Count: > 1 })
        {
            group.Fault("means", "several settings for the same bits", "bits for each");
        }

        var says = new Dictionary<long, SettingValue?>();
        foreach (var entry in group.Map.Entries)
        {
            if (RawNumber.Parse(entry.Key) is { } raw && group.Node(entry.Key) is { } node && setting is not null && node.AsText(group.Problems) is { } text)
            {
                var value = NamedValueReader.Value(setting, text);
                if (value is null && text is not NamedValueReader.NoCounterpart)
                {
                    var nearest = setting.Form is SettingForm.OneOf o ? Spelling.Nearest(text, o.Choices) : null;
                    group.Problems.Add(node, $"`{setting.Name}` has no value {Quote.Of(text)}", nearest is null ? $"{NamedValueReader.Wanted(setting)} or `{NamedValueReader.NoCounterpart}` would do" : $"`{nearest}` would do");
                }

                says[raw] = value;
            }
        }

        group.Done();
        if (setting is not null && says.Count == 0)
        {
            group.Problems.Add(group.Map, "it is not said what the bits stand for", $"`0:` and `1:` with {NamedValueReader.Wanted(setting)} would do");
        }

        return setting is null ? null : new BitField(first, last, setting, says);
    }

    private static (int First, int Last)? Place(string key)
    {
        var parts = key.Split('-');
        return parts.Length is 1 or 2 && Bit(parts[0]) is { } first && Bit(parts[^1]) is { } last && first <= last ? (first, last) : null;
    }

    private static int? Bit(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var bit) && bit <= Highest ? bit : null;
}
