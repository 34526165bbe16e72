using System.Security.Cryptography;

namespace Runup.Store.Photos;

/// <summary>Photos beside the record, each under its own checksum: <c>photos/SHA256.jpg</c>.</summary>
public static class PhotoFolder
{
    /// <summary>Keeps a photo and returns its checksum in hex; one that is there already is left alone.</summary>
    /// <exception cref="IOException">It can't be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public static string Keep(string site, ReadOnlySpan<byte> jpeg)
    {
        var sha256 = Convert.ToHexStringLower(SHA256.HashData(jpeg));
        var file = Path.Combine(Directory.CreateDirectory(Path.Combine(site, "photos")).FullName, $"{sha256}.jpg");
        if (!IsWhole(file, sha256))
        {
            // First beside, then in its place: what has the name has the bytes.
            File.WriteAllBytes($"{file}.part", jpeg);
            File.Move($"{file}.part", file, overwrite: true);
        }

        return sha256;
    }

    private static bool IsWhole(string file, string sha256)
    {
        if (!File.Exists(file))
        {
            return false;
        }

        using var stream = File.OpenRead(file);
        return string.Equals(Convert.ToHexStringLower(SHA256.HashData(stream)), sha256, StringComparison.Ordinal);
    }
}
