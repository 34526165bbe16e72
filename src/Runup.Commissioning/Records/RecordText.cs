using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Runup.Commissioning.Records;

/// <summary>The body of an entry as JSON, and back; <c>kind</c> says which body it is.</summary>
public static class RecordText
{
    private static readonly RecordJson Json = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        // Units and names stay readable; the text goes into a database, never into a page unescaped.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
    });

    private static readonly IReadOnlySet<string> Kinds = Json.RecordBody.PolymorphismOptions!.DerivedTypes
        .Select(d => (string)d.TypeDiscriminator!).ToHashSet(StringComparer.Ordinal);

    /// <summary>Whether a body of this kind can be read.</summary>
    public static bool Knows(string kind) => Kinds.Contains(kind);

    /// <summary>Writes a body on one line, the kind first.</summary>
    public static string Write(RecordBody body) => JsonSerializer.Serialize(body, Json.RecordBody);

    /// <summary>Reads a body that <see cref="Write"/> wrote.</summary>
    public static RecordReading Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        try
        {
            return JsonSerializer.Deserialize(text, Json.RecordBody) is { } body
                ? new RecordReading.Known(body)
                : new RecordReading.Unknown("null");
        }
        catch (Exception e) when (e is JsonException or NotSupportedException)
        {
            return new RecordReading.Unknown(KindOf(text));
        }
    }

    private static string KindOf(string text)
    {
        try
        {
            using var document = JsonDocument.Parse(text);
            return document.RootElement.ValueKind == JsonValueKind.Object && document.RootElement.TryGetProperty("kind", out var kind) ? kind.ToString() : "none";
        }
        catch (JsonException)
        {
            return "not JSON";
        }
    }
}

/// <summary>What came of reading a body; a closed set.</summary>
public abstract record RecordReading
{
    private RecordReading()
    {
    }

    /// <summary>A body of a known kind.</summary>
    /// <param name="Body">The body.</param>
    public sealed record Known(RecordBody Body) : RecordReading;

    /// <summary>A kind or a form that this program doesn't know.</summary>
    /// <param name="Kind">What stands for the kind.</param>
    public sealed record Unknown(string Kind) : RecordReading;
}

[JsonSerializable(typeof(RecordBody))]
internal sealed partial class RecordJson : JsonSerializerContext;
