using System.Text.Json;
using Runup.Cli.Plan;
using Runup.Cli.Terminal;
using Runup.Commissioning.Sheet;
using Runup.Profiles;

namespace Runup.Cli.Sheet;

/// <summary>The sheet for programs.</summary>
internal static class SheetJson
{
    internal static void Write(SheetModel sheet) => JsonOut.Write(json => json.ArrayValue(sheet.Lines, (j, entry) => Line(j, sheet, entry)));

    private static void Line(Utf8JsonWriter json, SheetModel sheet, SheetEntry entry)
    {
        var line = entry.Line;
        json.WriteStartObject();
        json.WriteNumber("order", line.Order);
        json.WriteString("parameter", line.Parameter?.Number);
        json.WriteString("name", line.Parameter?.Name);
        json.WriteString("display", line.Display);
        json.WriteString("unit", line.Unit);
        json.Number("raw", line.Raw);
        json.Number("register", line.Parameter?.Register);
        json.WriteString("default_display", line.Default?.Display);
        json.WriteString("default_unit", line.Default?.Unit);
        json.WriteString("before_display", line.BeforeDisplay);
        json.WriteString("before_unit", line.BeforeUnit);
        json.WriteString("before_from", line.Before is null ? null : sheet.Found is null ? "factory" : "as-found");
        json.WriteString("low_display", line.Low?.Display);
        json.WriteString("high_display", line.High?.Display);
        json.WriteBoolean("changed", line.Changed);
        json.WriteString("setting", line.Settings.Count == 0 ? null : string.Join(", ", line.Settings.Select(s => s.Name)));
        json.WriteString("mapping", line.Mapping?.Name());
        json.WriteString("rank", entry.Row.Rank?.Word());
        json.WriteString("reason", entry.Row.Reason);
        json.WriteString("effect", entry.Effect);
        json.WriteString("instead", entry.IsOffered ? null : entry.Why);
        json.Array("marks", entry.Marks, (j, mark) => j.WriteStringValue(mark.ToString()));
        json.WriteEndObject();
    }
}
