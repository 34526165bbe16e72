using Runup.Settings;

namespace Runup.Profiles;

/// <summary>Puts settings into the bits of one value; what the plan leaves open keeps what the drive holds.</summary>
internal static class BitsEncoding
{
    internal static Encoding Encode(Surroundings at, Parameter parameter, Meaning.Bits meaning, SettingSet plan)
    {
        var raw = at.Values[parameter.Number] ?? 0;
        var said = new List<string>();
        foreach (var field in meaning.Fields)
        {
            if (plan[field.Setting] is not { } wanted)
            {
                continue;
            }

            if (Bits(field, field.In(raw), wanted) is not { } bits)
            {
                return new Encoding.Undecided($"{Start(field)} cannot say {SettingText.Of(field.Setting, wanted)} for {field.Setting.Name}.");
            }

            raw = field.Into(raw, bits);
            said.Add($"{field} = {bits} for {field.Setting.Name}");
        }

        return new Encoding.Value(raw, Mapping.Converted, Fit.Exact.Instance, string.Join(", ", said) + "; the other bits as from the factory");
    }

    private static long? Bits(BitField field, long held, SettingValue wanted)
    {
        var fitting = field.Says.Where(s => s.Value is { } says && ChoiceEncoding.Same(says, wanted)).Select(s => s.Key).ToList();
        return fitting switch
        {
            [] => null,
            _ when fitting.Contains(held) => held,
            [var first, ..] => first,
        };
    }

    private static string Start(BitField field) => string.Concat(field.ToString()[..1].ToUpperInvariant(), field.ToString().AsSpan(1));
}
