using SkiaSharp;

namespace Runup.Files.Photos;

/// <summary>A photo's pixels, turned upright, on white, no longer on a side than a report needs, as JPEG.</summary>
internal static class PhotoPixels
{
    private const int LongestSide = 1600;
    private const int Quality = 85;

    /// <summary>The photo; null where it can't be decoded to its end.</summary>
    public static (ReadOnlyMemory<byte> Jpeg, int Width, int Height)? Of(SKCodec codec)
    {
        using var bitmap = Decoded(codec);
        if (bitmap is null)
        {
            return null;
        }

        var lying = codec.EncodedOrigin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        var scale = Math.Min(1f, (float)LongestSide / Math.Max(bitmap.Width, bitmap.Height));
        var (across, down) = (Math.Max(1, (int)Math.Round(bitmap.Width * scale)), Math.Max(1, (int)Math.Round(bitmap.Height * scale)));
        var (width, height) = lying ? (down, across) : (across, down);
        using var surface = SKSurface.Create(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Premul, SKColorSpace.CreateSrgb()));
        if (surface is null)
        {
            return null;
        }

        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.SetMatrix(Upright(codec.EncodedOrigin, across, down));
        using var image = SKImage.FromBitmap(bitmap);
        surface.Canvas.DrawImage(image, SKRect.Create(across, down), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        using var made = surface.Snapshot();
        using var jpeg = made.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return (jpeg.ToArray(), width, height);
    }

    // A large JPEG is decoded at an eighth part or several: less to hold, and nothing is lost that the report shows.
    private static SKBitmap? Decoded(SKCodec codec)
    {
        var full = codec.Info;
        var size = codec.GetScaledDimensions(Math.Min(1f, 2f * LongestSide / Math.Max(full.Width, full.Height)));
        var bitmap = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul, SKColorSpace.CreateSrgb()));
        if (!bitmap.IsNull && codec.GetPixels(bitmap.Info, bitmap.GetPixels()) == SKCodecResult.Success)
        {
            return bitmap;
        }

        bitmap.Dispose();
        return null;
    }

    // Orientation of Exif 2.3, tag 0112h: what the picture must be turned by to stand upright.
    private static SKMatrix Upright(SKEncodedOrigin origin, float across, float down) => origin switch
    {
        SKEncodedOrigin.TopRight => new(-1, 0, across, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new(-1, 0, across, 0, -1, down, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new(1, 0, 0, 0, -1, down, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new(0, -1, down, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new(0, -1, down, -1, 0, across, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new(0, 1, 0, -1, 0, across, 0, 0, 1),
        _ => SKMatrix.Identity,
    };
}
