using Runup.Settings;

namespace Runup.Profiles;

/// <summary>Puts settings into one of a parameter's named values.</summary>
internal static class ChoiceEncoding
{
    internal static Encoding Encode(Surroundings at, Parameter parameter, Meaning.Choice meaning, SettingSet plan)
    {
        var wanted = Wanted(at, parameter, meaning, plan);
        var fitting = new List<long>();
        foreach (var (raw, says) in meaning.Counterparts)
        {
            if (says is not null && Agrees(says, wanted))
            {
                fitting.Add(raw);
            }
        }

        var mapping = meaning.Chosen.Count == 1 ? Mapping.Direct : Mapping.Converted;
        return fitting switch
        {
            [var only] => new Encoding.Value(only, mapping, Fit.Exact.Instance, null),
            [] => new Encoding.Undecided($"The drive has no such choice; it offers {Labels(parameter, meaning.Counterparts.Keys)}."),
            _ when at.Values[parameter.Number] is { } held && fitting.Contains(held) => new Encoding.Value(held, mapping, Fit.Exact.Instance, null),
            _ => new Encoding.Undecided($"Several choices of the drive say this: {Labels(parameter, fitting)}."),
        };
    }

    // A setting that the plan leaves open keeps what the drive holds, if that is known.
    private static SettingValue?[] Wanted(Surroundings at, Parameter parameter, Meaning.Choice meaning, SettingSet plan)
    {
        var held = at.Values[parameter.Number] is { } raw && meaning.Counterparts.TryGetValue(raw, out var values) ? values : null;
        return [.. meaning.Chosen.Select((setting, i) => plan[setting] ?? held?[i])];
    }

    private static bool Agrees(IReadOnlyList<SettingValue> offered, SettingValue?[] wanted)
    {
        for (var i = 0; i < wanted.Length; i++)
        {
            if (wanted[i] is { } value && !Same(offered[i], value))
            {
                return false;
            }
        }

        return true;
    }

    internal static bool Same(SettingValue offered, SettingValue wanted) => (offered, wanted) switch
    {
        (SettingValue.Number a, SettingValue.Number b) => Fit.Same(a.Si, b.Si),
        _ => offered == wanted,
    };

    private static string Labels(Parameter parameter, IEnumerable<long> raws) =>
        string.Join(", ", raws.Select(raw => $"\"{DisplayText.Of(parameter, raw, ParameterValues.Empty)}\""));
}
