using System.Text.Json;
using Runup.Cli.Terminal;
using Runup.Commissioning.Comparison;
using Runup.Profiles;

namespace Runup.Cli.Comparison;

/// <summary>Two states side by side, for programs: only what differs.</summary>
internal static class CompareJson
{
    internal static void Write(StateComparison comparison, Consequences? consequences) =>
        JsonOut.Write(json => json.ArrayValue(comparison.Differences.Select((d, i) => (Difference: d, Consequence: consequences?.OfEach[i])), Line));

    private static void Line(Utf8JsonWriter json, (StateDifference Difference, string? Consequence) line)
    {
        json.WriteStartObject();
        json.WriteString("setting", line.Difference.Setting?.Name);
        json.WriteString("parameter", ComparePage.Numbers(line.Difference));
        json.WriteString("left", line.Difference.Left.Text);
        json.WriteString("right", line.Difference.Right.Text);
        json.WriteString("consequence", line.Consequence);
        json.WriteEndObject();
    }
}
