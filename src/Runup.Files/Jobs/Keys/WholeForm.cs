using System.Text.Json.Nodes;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Keys;

/// <summary>A whole number within limits.</summary>
/// <param name="low">The lowest that would do.</param>
/// <param name="high">The highest that would do.</param>
internal sealed class WholeForm(int low, int high) : Form<int>
{
    internal override string Wanted => $"a whole number from {low} to {high}";

    internal override bool Read(YamlScalar scalar, Desk desk, out int value, out double roundingSi)
    {
        roundingSi = 0;
        var number = scalar.AsWhole(low, high, desk.Problems);
        value = number ?? 0;
        return number is not null;
    }

    internal override JsonObject Schema() => new() { ["type"] = "integer", ["minimum"] = low, ["maximum"] = high };
}
