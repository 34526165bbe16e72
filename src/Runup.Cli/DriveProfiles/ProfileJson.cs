using System.Text.Json;
using Runup.Cli.Terminal;
using Runup.Profiles;

namespace Runup.Cli.DriveProfiles;

/// <summary>A profile as one JSON document.</summary>
internal static class ProfileJson
{
    internal static void Write(Utf8JsonWriter json, DriveProfile profile, DriveSize size)
    {
        var held = ParameterValues.Defaults(profile, size);
        json.WriteStartObject();
        json.WriteString("family", profile.Family);
        json.WriteString("title", profile.Title);
        json.WriteNumber("format", profile.Format);
        json.Array("sizes", profile.Sizes, (writer, s) => writer.WriteStringValue(s.Name));
        json.WriteString("size", size.Name);
        json.Array("regions", profile.Regions, (writer, r) => writer.WriteStringValue(r.Name));
        json.WriteString("region", size.Region?.Name);
        json.Array("parameters", profile.Parameters, (writer, p) =>
        {
            writer.WriteStartObject();
            writer.WriteString("number", p.Number);
            writer.WriteString("name", p.Name);
            writer.WriteString("group", p.Group);
            writer.WriteString("unit", DisplayText.Unit(p, held));
            writer.WriteString("values", ParameterWords.Values(profile, p, size, held));
            writer.WriteString("default_display", DisplayText.Of(p, held[p.Number]!.Value, held));
            writer.WriteNumber("default_raw", held[p.Number]!.Value);
            writer.WriteNumber("register", p.Register);
            writer.WriteNumber("width", p.Width);
            writer.WriteString("access", ParameterWords.Access(p.Access));
            writer.Array("means", p.Meaning?.Settings ?? [], (inner, s) => inner.WriteStringValue(s.Name));
            writer.WriteEndObject();
        });
        json.WriteEndObject();
    }
}
