using System.Text;
using Runup.Files.Yaml;

namespace Runup.Files;

/// <summary>Brings a file's bytes to text, or says why that can't be done.</summary>
internal static class TextOfFile
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a file; a byte-order mark stays its first character, so that an edit can write it back.</summary>
    internal static string? Read(string path, int limit, Problems problems)
    {
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            // The length of a pipe or a device is no guide, so that at most one byte more than the limit is read.
            var bytes = new byte[Math.Min(limit, stream.CanSeek ? stream.Length : limit) + 1];
            var count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            if (count > limit)
            {
                problems.AddForFile($"it has more than {limit} bytes", "a file of this kind is far smaller; is it the right one?");
                return null;
            }

            return Decode(bytes.AsSpan(0, count), problems);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            problems.AddForFile("there is no such file", "check the name");
        }
        catch (UnauthorizedAccessException)
        {
            problems.AddForFile(Directory.Exists(path) ? "it is a folder" : "it may not be read", "name a file that this user may read");
        }
        catch (Exception e) when (e is IOException or ArgumentException or NotSupportedException)
        {
            problems.AddForFile("it can't be read: " + e.Message, "check the name and the disk");
        }

        return null;
    }

    private static string? Decode(ReadOnlySpan<byte> bytes, Problems problems)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            problems.AddForFile("it is encoded as UTF-16", "save it as UTF-8");
            return null;
        }

        try
        {
            return Strict.GetString(bytes);
        }
        catch (DecoderFallbackException e)
        {
            var before = Encoding.UTF8.GetString(bytes[..Math.Clamp(e.Index, 0, bytes.Length)]);
            var line = before.Count(c => c == '\n') + 1;
            var column = before.Length - (before.LastIndexOf('\n') + 1) + 1;
            problems.Add(new Place(line, column, 0, 0), FileProblem.WholeFile, "a character that is not UTF-8", "save the file as UTF-8");
            return null;
        }
    }
}
