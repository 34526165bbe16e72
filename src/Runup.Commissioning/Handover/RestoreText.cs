using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Runup.Commissioning.Handover;

/// <summary>A restore file as JSON, and back.</summary>
public static class RestoreText
{
    private const int Format = 1;

    private static readonly RestoreJson Json = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        WriteIndented = true,
        NewLine = "\n",
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
    });

    /// <summary>Writes the file.</summary>
    public static string Write(RestoreFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var form = new RestoreForm(Format, file.Tag, file.Profile, file.Size, file.Identity, file.ReadAt, file.ChainHead, file.Checksum, file.Parameters);
        return JsonSerializer.Serialize(form, Json.RestoreForm) + "\n";
    }

    /// <summary>Reads a file and holds it against its checksum.</summary>
    public static RestoreReading Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        try
        {
            return JsonSerializer.Deserialize(text, Json.RestoreForm) switch
            {
                null => new RestoreReading.NotReadable("it is empty"),
                { RunupRestore: > Format } form => new RestoreReading.NotReadable($"it is of format {form.RunupRestore}, which this Runup does not know; use a newer one"),
                var form when !string.Equals(form.Sha256, RestoreFile.ChecksumOf(form.Profile, form.Size, form.Parameters), StringComparison.OrdinalIgnoreCase) =>
                    new RestoreReading.Altered("its checksum does not agree with its values: it was changed after it was written"),
                var form => new RestoreReading.Read(FileOf(form)),
            };
        }
        catch (JsonException e)
        {
            return new RestoreReading.NotReadable($"it is no restore file (line {(e.LineNumber ?? 0) + 1})");
        }
    }

    private static RestoreFile FileOf(RestoreForm form) => new()
    {
        Tag = form.Tag,
        Profile = form.Profile,
        Size = form.Size,
        Identity = form.Identity,
        ReadAt = form.ReadAt,
        ChainHead = form.ChainHead,
        Parameters = form.Parameters,
    };
}

/// <summary>What came of reading a restore file; a closed set.</summary>
public abstract record RestoreReading
{
    private RestoreReading()
    {
    }

    /// <summary>The file agrees with its checksum.</summary>
    /// <param name="File">The file.</param>
    public sealed record Read(RestoreFile File) : RestoreReading;

    /// <summary>Somebody changed it.</summary>
    /// <param name="Why">What does not agree.</param>
    public sealed record Altered(string Why) : RestoreReading;

    /// <summary>It is no restore file that can be read.</summary>
    /// <param name="Why">Why not.</param>
    public sealed record NotReadable(string Why) : RestoreReading;
}

internal sealed record RestoreForm(
    int RunupRestore, string Tag, string Profile, string Size, string Identity, DateTimeOffset ReadAt, string ChainHead, string Sha256, IReadOnlyList<RestoreLine> Parameters);

[JsonSerializable(typeof(RestoreForm))]
internal sealed partial class RestoreJson : JsonSerializerContext;
