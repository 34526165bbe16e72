using Runup.Files.Yaml;
using Runup.Profiles;

namespace Runup.Files.Profiles;

/// <summary>Reads a limit or a factory value that another parameter decides: <c>{of: 106, times: 1.5}</c> or <c>{chosen-by: 130, 0: 50.0, 1: 60.0}</c>.</summary>
internal static class DependentReader
{
    private const string Shapes = "`{of: number, times: 1.5}`, or `{chosen-by: number, 0: value, 1: value}` for a parameter with choices, would do";

    /// <summary>What narrows a range; the number of a parameter alone stands for once what that says.</summary>
    internal static Dependent? Limit(MapReader map, string key, ParameterForm? form)
    {
        if (map.Node(key) is not { } node)
        {
            return null;
        }

        if (form is ParameterForm.Choices)
        {
            map.Fault(key, "choices have no range", "leave it out");
            return null;
        }

        return node is YamlMap group ? Read(group, map.Problems, form) : node.AsText(map.Problems, "a parameter's number") is { } number ? new Dependent.Times(number, 1) : null;
    }

    /// <summary>What the map says; null with a problem where it is wrong.</summary>
    internal static Dependent? Read(YamlMap group, Problems problems, ParameterForm? form)
    {
        var reader = new MapReader(group, problems);
        var of = reader.Text("of");
        var times = reader.Exact("times");
        var by = reader.Text("chosen-by");
        var values = new Dictionary<long, long>();
        foreach (var entry in group.Entries)
        {
            if (by is not null && form is not null && RawNumber.Parse(entry.Key) is { } when && reader.Node(entry.Key) is { } node && Value(node, form, problems) is { } raw)
            {
                values[when] = raw;
            }
        }

        reader.Done();
        if (of is null == by is null || (of is null && times is not null))
        {
            problems.Add(group, "it is not said on which parameter it depends, and how", Shapes);
            return null;
        }

        if (times is <= 0)
        {
            reader.Fault("times", "not more than zero", "how many times it is what the other parameter says");
            return null;
        }

        return of is not null ? new Dependent.Times(of, times ?? 1) : new Dependent.ByChoice(by!, values);
    }

    /// <summary>A value of a row as the display shows it, in counts; of choices the value in the register.</summary>
    internal static long? Value(YamlNode node, ParameterForm form, Problems problems) => form switch
    {
        ParameterForm.Numeric n when node is YamlScalar scalar && n.Specials.FirstOrDefault(s => s.Label.Length > 0 && string.Equals(s.Label, scalar.Text, StringComparison.Ordinal)) is { } special => special.Raw,
        ParameterForm.Numeric { Digits: not Digits.Decimal } when node is YamlScalar scalar && RawNumber.Parse(scalar.Text) is { } raw => raw,
        ParameterForm.Numeric n => RawNumber.OfDisplay(node, n.Scale.PerCount, problems),
        ParameterForm.Choices => RawNumber.OfDisplay(node, 1, problems),
        _ => null,
    };
}
