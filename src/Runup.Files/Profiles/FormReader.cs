using Runup.Files.Yaml;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Files.Profiles;

/// <summary>Reads what values a parameter takes, and what they mean: a number with its scale and range, or choices.</summary>
internal static class FormReader
{
    private static readonly Runup.Files.Yaml.Choices<string> Shown = Runup.Files.Yaml.Choices.Words("binary", "hexadecimal");

    internal static (ParameterForm? Form, Meaning? Meaning) Read(MapReader map, IReadOnlyList<Setting>? settings, ChoiceLists lists, bool isGuessed) =>
        map.Node("choices") is { } choices ? ReadChoices(map, choices, settings, lists, isGuessed) : ReadNumber(map, settings, isGuessed);

    private static (ParameterForm? Form, Meaning? Meaning) ReadChoices(MapReader map, YamlNode node, IReadOnlyList<Setting>? settings, ChoiceLists lists, bool isGuessed)
    {
        if (lists.Find(node, map.Problems) is not { } list || settings is null)
        {
            return (null, null);
        }

        // A list that rows share, and a row whose meaning is guessed, say what their values stand for; a row without meaning has no use for that.
        var problems = settings.Count == 0 && (list != node || isGuessed) ? new Problems("") : map.Problems;
        var reader = new NamedValueReader(settings, problems);
        reader.Read(list, labelled: true);
        return (new ParameterForm.Choices(reader.Values), settings.Count == 0 ? null : new Meaning.Choice(settings, reader.Counterparts));
    }

    private static (ParameterForm? Form, Meaning? Meaning) ReadNumber(MapReader map, IReadOnlyList<Setting>? settings, bool isGuessed)
    {
        var scale = Scale(map, needed: "the display's value of one count, such as `0.1`, or `choices`, would do");
        var unit = Unit(map, scale ?? DisplayScale.Of(1));
        var low = Limit(map, "low", scale);
        var high = Limit(map, "high", scale);
        var step = map.Node("step") is { } node && scale is not null ? RawNumber.OfDisplay(node, scale.Value.PerCount, map.Problems) : 1;
        if (step is < 1)
        {
            map.Fault("step", "a step of nothing", "leave it out, or give the display's step from one value to the next");
        }

        var digits = map.Word("shown-in", Shown);
        if (digits is not null && (low is < 0 || scale is { PerCount: not 1 }))
        {
            map.Fault("shown-in", "digits for whole numbers from zero", "`scale: 1` and `low: 0`, or leave it out");
        }

        var bits = ReadBits(map, settings);
        var conversion = ConversionReader.Read(map);
        var specials = new NamedValueReader(settings ?? [], isGuessed ? new Problems("") : map.Problems);
        if (map.Group("special") is { } special)
        {
            specials.Read(special.Map, labelled: false);
        }

        if (settings is { Count: > 1 })
        {
            map.Fault("means", "several settings for one number", "one setting would do; several only where `choices` choose them together");
        }

        if (settings is null or { Count: > 1 } || scale is null || unit is null || low is null || high is null || step is null or < 1 || conversion is null)
        {
            return (null, null);
        }

        var form = new ParameterForm.Numeric(scale.Value, unit, low.Value, high.Value, step.Value, specials.Values)
        {
            Digits = digits switch { null => Digits.Decimal, "binary" => Digits.Binary, _ => Digits.Hexadecimal },
        };
        return (form, bits ?? (settings is [var setting] ? MeaningReader.OfNumber(map, setting, conversion, specials) : null));
    }

    private static Meaning? ReadBits(MapReader map, IReadOnlyList<Setting>? settings)
    {
        if (map.Group("bits", needed: null) is not { } group)
        {
            return null;
        }

        if (settings is { Count: > 0 })
        {
            map.Fault("bits", "bits with meanings of their own beside `means`", "one of the two would do");
        }

        return BitsReader.Read(group.Map, map.Problems);
    }

    private static long? Limit(MapReader map, string key, DisplayScale? scale) =>
        map.Node(key, "the limit as the display shows it would do") is { } node && scale is { } s ? RawNumber.OfDisplay(node, s.PerCount, map.Problems) : null;

    private static DisplayScale? Scale(MapReader map, string? needed)
    {
        var perCount = map.Exact("scale", needed);
        var decimals = map.Whole("decimals", 0, 9);
        if (perCount is null)
        {
            return null;
        }

        if (perCount <= 0)
        {
            map.Fault("scale", "a scale that is not more than zero", "the display's value of one count would do");
            return null;
        }

        return decimals is { } d ? new DisplayScale(perCount.Value, d) : DisplayScale.Of(perCount.Value);
    }

    private static ParameterUnit? Unit(MapReader map, DisplayScale scale)
    {
        var node = map.Node("unit");
        if (node is not YamlMap chosen)
        {
            return node is null ? new ParameterUnit.Fixed("") : node.AsText(map.Problems) is { } symbol ? new ParameterUnit.Fixed(symbol) : null;
        }

        var reader = new MapReader(chosen, map.Problems);
        var by = reader.Text("chosen-by", "the number of the parameter that chooses the unit would do");
        var units = new List<ChosenUnit>();
        foreach (var entry in chosen.Entries)
        {
            if (RawNumber.Parse(entry.Key) is { } when && ReadChosen(reader.Node(entry.Key)!, when, scale, map.Problems) is { } unit)
            {
                units.Add(unit);
            }
        }

        reader.Done();
        return by is null ? null : new ParameterUnit.ChosenBy(by, units);
    }

    private static ChosenUnit? ReadChosen(YamlNode node, long when, DisplayScale scale, Problems problems)
    {
        if (node is not YamlMap map)
        {
            return node.AsText(problems) is { } symbol ? new ChosenUnit(when, symbol, scale) : null;
        }

        var reader = new MapReader(map, problems);
        var unit = reader.Text("unit", "the unit would do");
        var own = Scale(reader, needed: null) ?? scale;
        reader.Done();
        return unit is null ? null : new ChosenUnit(when, unit, own);
    }
}
