using System.Text.Encodings.Web;
using System.Text.Json;

namespace Runup.Cli.Terminal;

/// <summary>One JSON document on standard output, in the shapes that others rely on.</summary>
internal static class JsonOut
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static void Write(Action<Utf8JsonWriter> write, bool indented = true)
    {
        using var output = Console.OpenStandardOutput();
        using (var writer = new Utf8JsonWriter(output, new JsonWriterOptions { Indented = indented, Encoder = Options.Encoder }))
        {
            write(writer);
        }

        output.WriteByte((byte)'\n');
    }

    /// <summary>Of one item its object; of several an array in their order.</summary>
    internal static void OneOrMany<T>(IReadOnlyList<T> items, Action<Utf8JsonWriter, T> write) => Write(json =>
    {
        if (items.Count == 1)
        {
            write(json, items[0]);
        }
        else
        {
            json.ArrayValue(items, write);
        }
    });

    /// <summary>A number as people would write it: nine significant digits; null for none.</summary>
    internal static void Number(this Utf8JsonWriter writer, string key, double? value)
    {
        writer.WritePropertyName(key);
        writer.NumberValue(value);
    }

    internal static void NumberValue(this Utf8JsonWriter writer, double? value)
    {
        if (value is not { } number || !double.IsFinite(number))
        {
            writer.WriteNullValue();
            return;
        }

        writer.WriteRawValue(double.Parse(number.ToString("G9", System.Globalization.CultureInfo.InvariantCulture), System.Globalization.CultureInfo.InvariantCulture)
            .ToString("R", System.Globalization.CultureInfo.InvariantCulture).Replace("E+", "e", StringComparison.Ordinal));
    }

    internal static void Array<T>(this Utf8JsonWriter writer, string key, IEnumerable<T> items, Action<Utf8JsonWriter, T> write)
    {
        writer.WritePropertyName(key);
        writer.ArrayValue(items, write);
    }

    internal static void ArrayValue<T>(this Utf8JsonWriter writer, IEnumerable<T> items, Action<Utf8JsonWriter, T> write)
    {
        writer.WriteStartArray();
        foreach (var item in items)
        {
            write(writer, item);
        }

        writer.WriteEndArray();
    }

    internal static void Object(this Utf8JsonWriter writer, string key, Action write)
    {
        writer.WritePropertyName(key);
        writer.WriteStartObject();
        write();
        writer.WriteEndObject();
    }
}
