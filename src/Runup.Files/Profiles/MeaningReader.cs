using Runup.Files.Yaml;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Files.Profiles;

/// <summary>Reads which settings a parameter carries.</summary>
internal static class MeaningReader
{
    /// <summary>The settings of <c>means</c>, none where it is missing; null with a problem where one is unknown.</summary>
    internal static IReadOnlyList<Setting>? Settings(MapReader map, string key = "means")
    {
        if (map.Node(key) is not { } node)
        {
            return [];
        }

        var settings = new List<Setting>();
        IReadOnlyList<YamlNode> names = node is YamlList list ? list.Items : [node];
        foreach (var name in names)
        {
            if (name.AsText(map.Problems, "a setting's name") is not { } text)
            {
                return null;
            }

            if (Setting.Find(text) is not { } setting)
            {
                var nearest = Spelling.Nearest(text, Setting.All.Select(s => s.Name));
                map.Problems.Add(name, $"there is no setting {Quote.Of(text)}", nearest is null ? "a name of the vocabulary of settings, or no `means` at all, would do" : $"`{nearest}` would do");
                return null;
            }

            settings.Add(setting);
        }

        return settings;
    }

    /// <summary>The settings of <c>perhaps</c>, which an import guessed and nobody has confirmed.</summary>
    internal static IReadOnlyList<Setting> Perhaps(MapReader map)
    {
        var perhaps = Settings(map, "perhaps") ?? [];
        if (perhaps.Count > 0 && map.Map.Find("means") is not null)
        {
            map.Fault("perhaps", "a guess beside what is confirmed", "keep `means`, and leave `perhaps` out");
        }

        return perhaps;
    }

    /// <summary>The meaning of a number; null with a problem where the setting has choices and only special values could say them.</summary>
    internal static Meaning? OfNumber(MapReader map, Setting setting, Conversion conversion, NamedValueReader specials)
    {
        if (setting.Form is SettingForm.OneOf)
        {
            map.Fault("means", $"`{setting.Name}` is chosen, not counted", "`choices` would do, with `is` for each");
            return null;
        }

        var says = new Dictionary<long, SettingValue?>();
        foreach (var (raw, counterpart) in specials.Counterparts)
        {
            says.Add(raw, counterpart is [var value] ? value : null);
        }

        return new Meaning.Quantity(setting, conversion, says);
    }
}
