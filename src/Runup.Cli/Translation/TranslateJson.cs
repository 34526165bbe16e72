using System.Text.Json;
using Runup.Cli.Terminal;
using Runup.Commissioning.Translation;

namespace Runup.Cli.Translation;

/// <summary>A translation for programs.</summary>
internal static class TranslateJson
{
    internal static void Write(DriveTranslation translation) => JsonOut.Write(json => json.ArrayValue(translation.Rows, Row));

    private static void Row(Utf8JsonWriter json, TranslatedSetting row)
    {
        json.WriteStartObject();
        json.WriteString("setting", row.Setting?.Name);
        json.WriteString("old", row.OldText);
        json.WriteString("new", row.NewText);
        json.WriteString("mapping", row.Fate.Name());
        json.WriteString("note", row.Note);
        json.WriteEndObject();
    }
}
