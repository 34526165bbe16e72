using Runup.Files.Yaml;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Files.Profiles;

/// <summary>Reads choices and special values: what the display shows, and what it stands for.</summary>
internal sealed class NamedValueReader(IReadOnlyList<Setting> settings, Problems problems)
{
    internal const string NoCounterpart = "no-counterpart";

    internal List<NamedValue> Values { get; } = [];

    internal Dictionary<long, IReadOnlyList<SettingValue>?> Counterparts { get; } = [];

    /// <summary>Reads a map from value to choice.</summary>
    /// <param name="map">The map.</param>
    /// <param name="labelled">Whether each value must have a text of its own.</param>
    internal void Read(YamlMap map, bool labelled)
    {
        foreach (var entry in map.Entries)
        {
            if (RawNumber.Parse(entry.Key) is not { } raw)
            {
                problems.Add(entry.Value.KeyPlace, entry.Value.KeyPath, $"{Quote.Of(entry.Key)} is not a value of a register", "a whole number before the colon would do");
            }
            else if (Values.Any(v => v.Raw == raw))
            {
                problems.Add(entry.Value.KeyPlace, entry.Value.KeyPath, $"the value {raw} stands twice", "keep one of the two");
            }
            else
            {
                Read(raw, entry.Value, labelled);
            }
        }
    }

    private void Read(long raw, YamlNode node, bool labelled)
    {
        if (node is not YamlMap map)
        {
            if (node.AsText(problems) is { } text)
            {
                Values.Add(new NamedValue(raw, text));
                Say(raw, node, null, text);
            }

            return;
        }

        var reader = new MapReader(map, problems);
        var label = reader.Text("label", labelled ? "what the display shows would do" : null);
        var says = reader.Node("is");
        reader.Done();
        if (label is not null || !labelled)
        {
            Values.Add(new NamedValue(raw, label ?? ""));
            Say(raw, node, says, label);
        }
    }

    private void Say(long raw, YamlNode choice, YamlNode? says, string? label)
    {
        if (settings.Count == 0)
        {
            if (says is not null)
            {
                problems.Add(says, "a counterpart, but the parameter has no `means`", "leave it out, or say what the parameter means");
            }

            return;
        }

        if (says is YamlScalar { Text: NoCounterpart })
        {
            Counterparts[raw] = null;
        }
        else if (says is not null)
        {
            Counterparts[raw] = Stated(says);
        }
        else if (settings is [var only] && label is not null && Value(only, label) is { } value)
        {
            Counterparts[raw] = [value];
        }
        else
        {
            problems.Add(choice, $"it is not said what {(label is null ? "the value" : Quote.Of(label))} stands for", $"`is:` with {Wanted()} or `{NoCounterpart}` would do");
        }
    }

    private List<SettingValue>? Stated(YamlNode says)
    {
        IReadOnlyList<YamlNode> nodes = says is YamlList list ? list.Items : [says];
        if (nodes.Count != settings.Count)
        {
            problems.Add(says, $"{nodes.Count} values for {settings.Count} settings", $"{Wanted()} would do");
            return null;
        }

        var values = new List<SettingValue>();
        for (var i = 0; i < nodes.Count; i++)
        {
            if (nodes[i].AsText(problems) is { } text)
            {
                if (Value(settings[i], text) is { } value)
                {
                    values.Add(value);
                }
                else
                {
                    var nearest = settings[i].Form is SettingForm.OneOf o ? Runup.Quantities.Spelling.Nearest(text, o.Choices) : null;
                    problems.Add(nodes[i], $"`{settings[i].Name}` has no value {Quote.Of(text)}", nearest is null ? $"{Wanted(settings[i])} or `{NoCounterpart}` would do" : $"`{nearest}` would do");
                }
            }
        }

        return values.Count == settings.Count ? values : null;
    }

    internal static SettingValue? Value(Setting setting, string text) => setting.Form switch
    {
        SettingForm.OneOf o => o.Choices.Contains(text, StringComparer.Ordinal) ? new SettingValue.Choice(text) : null,
        SettingForm.Numeric n => decimal.TryParse(text, System.Globalization.NumberStyles.AllowLeadingSign | System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out var number)
            ? new SettingValue.Number((double)number * n.SiPerUnit)
            : null,
        _ => throw new InvalidOperationException("Every form of setting is told apart."),
    };

    private string Wanted() => settings.Count == 1 ? Wanted(settings[0]) : "`[" + string.Join(", ", settings.Select(s => s.Name)) + "]`";

    internal static string Wanted(Setting setting) => setting.Form is SettingForm.OneOf o ? "one of " + Quote.List(o.Choices) : "a number";
}
