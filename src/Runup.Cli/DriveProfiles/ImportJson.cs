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
        var advisor = new ConversionAdvisor(rows, suggestions);
        json.Array("parameters", Enumerable.Range(0, rows.Count), (writer, i) => Row(writer, rows[i], suggestions[i], advisor.Of(i)));
        json.Array("problems", problems, (writer, problem) =>
        {
            writer.WriteStartObject();
            writer.WriteNumber("line", problem.Line);
            writer.WriteString("what", $"{problem.Key}: {problem.Found}; {problem.WouldDo}");
            writer.WriteEndObject();
        });
        json.WriteEndObject();
    }

    private static void Row(Utf8JsonWriter json, ListedParameter row, Suggestion suggestion, ConversionAdvice advice)
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
        var declared = advice as ConversionAdvice.Declared;
        json.WriteString("conversion", declared is null ? null : $"{declared.Key}: {declared.Value}");
        json.WriteString("to_ask", advice is ConversionAdvice.Asked asked ? asked.Question : declared is { IsSaid: false } usual ? usual.Because : null);
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
