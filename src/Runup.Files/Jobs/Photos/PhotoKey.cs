using System.Text.Json.Nodes;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Photos;

/// <summary>The key that names a photo of the set.</summary>
internal sealed class PhotoKey() : Key<PhotoName>("file", "a JPEG or PNG in the job's folder", Need.Yes)
{
    internal override string Example => "panel.png";

    internal override string Wanted => PhotoName.Wanted;

    internal override object? Read(YamlNode node, Desk desk) => PhotoName.Read(node, desk) is { } file ? new PhotoName(file) : null;

    internal override JsonObject Schema() => new() { ["$ref"] = "#/$defs/photo" };
}
