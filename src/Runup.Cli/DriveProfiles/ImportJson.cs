using System.Globalization;
using System.Text.Json;
using Runup.Cli.Terminal;
using Runup.Files;
using Runup.Profiles;

namespace Runup.Cli.DriveProfiles;

/// <summary>An imported table as one JSON document.</summary>
internal static class ImportJson
{
    internal static void Write(Utf8JsonWriter json, IReadOnlyList<ListedParameter> rows, IReadOnlyList<Suggestion> suggestions, IReadOnlyList<FileProblem> problems)
    {
        json.WriteStartObject();
        json.Array("parameters", rows.Zip(suggestions), (writer, pair) => Row(writer, pair.First, pair.Second));
        json.Array("problems", problems, (writer, problem) =>
        {
            writer.WriteStartObject();
            writer.WriteNumber("line", problem.Line);
            writer.WriteString("what", $"{problem.Key}: {problem.Found}; {problem.WouldDo}");
            writer.WriteEndObject();
        });
        json.WriteEndObject();
    }

    private static void Row(Utf8JsonWriter json, ListedParameter row, Suggestion suggestion)
    {
        json.WriteStartObject();
        json.WriteString("number", row.Number);
        json.WriteString("name", row.Name);
        json.WriteString("unit", row.Unit.Length > 0 ? row.Unit : null);
        Figure(json, "scale", row.Scale);
        Figure(json, "low", row.Low);
        Figure(json, "high", row.High);
        Figure(json, "default", row.Default);
        json.WritePropertyName("choices");
        if (row.Choices.Count == 0)
        {
            json.WriteNullValue();
        }
        else
        {
            json.WriteStartObject();
            foreach (var choice in row.Choices)
            {
                json.WriteString(choice.Raw.ToString(CultureInfo.InvariantCulture), choice.Label);
            }

            json.WriteEndObject();
        }

        json.WriteString("access", row.Access is { } access ? Access(access) : null);
        json.Number("register", row.Register);
        json.WriteString("meaning", suggestion.Setting?.Name);
        json.Number("certainty", suggestion.Certainty);
        json.WriteString("reason", suggestion.Reason);
        json.WriteEndObject();
    }

    private static string Access(ParameterAccess access) => Runup.Files.Profiles.ProfileWords.Access(access);

    private static void Figure(Utf8JsonWriter json, string key, decimal? value)
    {
        if (value is { } known)
        {
            json.WriteNumber(key, known);
        }
        else
        {
            json.WriteNull(key);
        }
    }
}
