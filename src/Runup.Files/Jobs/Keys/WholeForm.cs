using System.Text.Json.Nodes;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Keys;

/// <summary>A whole number within limits.</summary>
/// <param name="low">The lowest that would do.</param>
/// <param name="high">The highest that would do.</param>
internal sealed class WholeForm(int low, int high) : Form<int>
{
    internal override string Wanted => $"a whole number from {low} to {high}";

    internal override FormReading<int>? Read(YamlScalar scalar, Desk desk) =>
        scalar.AsWhole(low, high, desk.Problems) is { } number ? new FormReading<int>(number, 0) : null;

    internal override JsonObject Schema() => new() { ["type"] = "integer", ["minimum"] = low, ["maximum"] = high };
}
