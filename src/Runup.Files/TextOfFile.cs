using System.Text;
using Runup.Files.Yaml;

namespace Runup.Files;

/// <summary>Brings a file's bytes to text, or says why that can't be done.</summary>
internal static class TextOfFile
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a file; a byte-order mark stays its first character, so that an edit can write it back.</summary>
    internal static string? Read(string path, int limit, Problems problems) =>
        ReadBytes(path, limit, problems) is { } bytes ? Decode(bytes.Span, problems) : null;

    /// <summary>The bytes of a file; null with a problem where they can't be had.</summary>
    internal static ReadOnlyMemory<byte>? ReadBytes(string path, int limit, Problems problems)
    {
        if (string.IsNullOrWhiteSpace(path))
        {
            problems.AddForFile("its name is empty", "the name of a file would do");
            return null;
        }

        try
        {
            var reading = Task.Run(() => Bytes(path, limit));
            // A pipe that nobody writes into keeps its reader for ever.
            if (Task.WaitAny([reading], Patience) < 0)
            {
                problems.AddForFile($"nothing came of it within {Patience.TotalSeconds:0} s", "a file on a disk would do, or a pipe that is written into and closed");
                return null;
            }

            var bytes = reading.GetAwaiter().GetResult();
            if (bytes.Length > limit)
            {
                problems.AddForFile($"it has more than {limit} bytes", "a file of this kind is far smaller; is it the right one?");
                return null;
            }

            return bytes;
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            problems.AddForFile("there is no such file", Longer(path) is { } longer ? $"{longer} would do" : "check the name");
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

    // A name without its ending is the commonest slip.
    private static string? Longer(string path)
    {
        var folder = Path.GetDirectoryName(path) is { Length: > 0 } named ? named : ".";
        var start = Path.GetFileName(path) + ".";
        return Directory.Exists(folder)
            ? Directory.EnumerateFiles(folder, "*", new EnumerationOptions { IgnoreInaccessible = true }).Select(f => Path.GetFileName(f)).Where(n => n.StartsWith(start, StringComparison.OrdinalIgnoreCase))
                .OrderBy(n => n.EndsWith(".job.yaml", StringComparison.OrdinalIgnoreCase) ? 0 : 1).ThenBy(n => n, StringComparer.Ordinal)
                .Select(n => Path.Combine(Path.GetDirectoryName(path) ?? "", n)).FirstOrDefault()
            : null;
    }

    /// <summary>A file's bytes, and at most one more than the limit: the length of a pipe or a device is no guide.</summary>
    private static ReadOnlyMemory<byte> Bytes(string path, int limit)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var bytes = new byte[Math.Min(limit, stream.CanSeek ? stream.Length : limit) + 1];
        return bytes.AsMemory(0, stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false));
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
