using System.Security.Cryptography;
using SkiaSharp;

namespace Runup.Files.Photos;

/// <summary>Reads photos (JPEG, PNG) and makes them anew of their pixels: whatever else the file tells, such as where it was taken, is gone.</summary>
/// <remarks>Nothing is decoded before the size that the file claims is known to be one that a camera makes.</remarks>
public static class PhotoFile
{
    private const int LargestBytes = 40 * 1024 * 1024;
    private const int LongestSide = 20_000;
    private const long MostPixels = 80_000_000;

    /// <summary>Why a file is no photo, from its first bytes and the size that it claims; null where nothing speaks against it.</summary>
    public static string? WhyNot(string path)
    {
        var reading = Open(path, (_, _) => null);
        return (reading as PhotoReading.Refused)?.Why;
    }

    /// <summary>Reads a photo.</summary>
    public static PhotoReading Read(string path) => Open(path, (codec, bytes) => PhotoPixels.Of(codec) is var (jpeg, width, height)
        ? new PhotoReading.Taken(jpeg, width, height, Convert.ToHexStringLower(SHA256.HashData(bytes)))
        : new PhotoReading.Refused("it is damaged, or breaks off before its end"))!;

    private static PhotoReading? Open(string path, Func<SKCodec, byte[], PhotoReading?> then)
    {
        try
        {
            if (Bytes(path) is not { } bytes)
            {
                return new PhotoReading.Refused($"it has more than {LargestBytes / (1024 * 1024)} MB");
            }

            using var data = SKData.CreateCopy(bytes);
            using var codec = SKCodec.Create(data);
            return codec is null || codec.EncodedFormat is not (SKEncodedImageFormat.Jpeg or SKEncodedImageFormat.Png)
                ? new PhotoReading.Refused("it is neither JPEG nor PNG")
                : TooLarge(codec.Info) is { } why ? new PhotoReading.Refused(why) : then(codec, bytes);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return new PhotoReading.Refused("there is no such file");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new PhotoReading.Refused($"it can't be read: {e.Message}");
        }
        catch (Exception e) when (e is DllNotFoundException or TypeInitializationException)
        {
            return new PhotoReading.Refused("this computer lacks what reads photos (SkiaSharp's native library)");
        }
    }

    private static string? TooLarge(SKImageInfo info) => info.Width > LongestSide || info.Height > LongestSide || (long)info.Width * info.Height > MostPixels
        ? FormattableString.Invariant($"it claims {info.Width} by {info.Height} pixels; no more than {LongestSide} on a side and {MostPixels / 1_000_000} million in all are decoded")
        : null;

    // A pipe or a device has no length, and one that nobody writes into keeps its reader for ever: what has none is not opened.
    private static byte[]? Bytes(string path)
    {
        var file = new FileInfo(path);
        if (file.Length == 0)
        {
            throw new IOException("it is empty");
        }

        return file.Length <= LargestBytes ? File.ReadAllBytes(path) : null;
    }
}
