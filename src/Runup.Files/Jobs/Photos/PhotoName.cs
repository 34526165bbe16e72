using Runup.Files.Jobs.Curves;
using Runup.Files.Photos;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Photos;

/// <summary>A photo's name in the job's folder, at which there is a photo as far as its first bytes tell.</summary>
/// <param name="File">The name.</param>
internal sealed record PhotoName(string File)
{
    internal const string Wanted = "the name of a JPEG or PNG in the job's folder";

    /// <summary>The name; null with a problem where there is no such photo.</summary>
    internal static string? Read(YamlNode node, Desk desk)
    {
        if (node is not YamlScalar { IsEmpty: false } scalar)
        {
            desk.Problems.Add(node, node.Described, $"{Wanted} would do");
            return null;
        }

        if (CompanionFile.Find(scalar, desk) is not { } path)
        {
            return null;
        }

        if (PhotoFile.WhyNot(path) is { } why)
        {
            desk.Problems.Add(scalar, $"the photo {Quote.Of(scalar.Text.Trim())}: {why}", $"{Wanted} would do");
            return null;
        }

        return scalar.Text.Trim();
    }
}
