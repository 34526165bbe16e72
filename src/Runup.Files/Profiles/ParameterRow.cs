using Runup.Files.Yaml;
using Runup.Profiles;

namespace Runup.Files.Profiles;

/// <summary>What a profile says once for all rows that do not say otherwise.</summary>
internal sealed record RowDefaults(int Width, bool Signed, WordOrder WordOrder);

/// <summary>A parameter with the place of its row, for what is found wrong with it later.</summary>
internal sealed class ParameterRow(Parameter parameter, YamlMap map, bool defaultBySize, Problems problems)
{
    internal Parameter Parameter { get; private set; } = parameter;

    /// <summary>The row in the file.</summary>
    internal YamlMap Map { get; } = map;

    /// <summary>Display value of one count in the row, in which the row's and the sizes' values are written.</summary>
    internal decimal PerCount => Parameter.Form is ParameterForm.Numeric n ? n.Scale.PerCount : 1;

    /// <summary>The default of a row that leaves it to the sizes: the first size's; every size must give one.</summary>
    internal void SettleDefault(IReadOnlyList<DriveSize> sizes, IReadOnlyList<Region> regions)
    {
        if (!defaultBySize)
        {
            return;
        }

        if (sizes.Where(s => !Gives(s, regions)).Select(s => $"`{s.Name}`").ToList() is { Count: > 0 } without)
        {
            problems.Add(Map.Find("default")!, $"no default for it at size {string.Join(", ", without)}", $"each size gives one under `defaults: {{{Parameter.Number}: ...}}`");
        }
        else if (sizes.Count > 0)
        {
            Parameter = Parameter with { Default = (sizes[0] with { Region = regions.Count > 0 ? regions[0] : null }).DefaultOf(Parameter.Number)!.Value };
        }
    }

    private bool Gives(DriveSize size, IReadOnlyList<Region> regions) =>
        size.Defaults.ContainsKey(Parameter.Number) || (regions.Count > 0 && regions.All(r => (size with { Region = r }).DefaultOf(Parameter.Number) is not null));
}
