using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using SkiaSharp;

namespace Runup.Files.Tests.Photos;

/// <summary>Photos put together byte by byte: JPEG after ITU-T T.81, Exif after its version 2.3, PNG after ISO/IEC 15948.</summary>
internal static class MadePhotos
{
    /// <summary>Latitude 59° 54′ 47.11″ as Exif stores it: three rationals, big-endian.</summary>
    internal static byte[] Latitude { get; } = Convert.FromHexString("0000003B000000010000003600000001" + "0000126700000064");

    /// <summary>A JPEG, its left half red and its right half blue, that says how it lies and where it was taken.</summary>
    internal static byte[] JpegWithExif(int width, int height, ushort orientation)
    {
        using var surface = SKSurface.Create(new SKImageInfo(width, height));
        surface.Canvas.Clear(SKColors.Blue);
        using var red = new SKPaint { Color = SKColors.Red };
        surface.Canvas.DrawRect(0, 0, width / 2f, height, red);
        using var image = surface.Snapshot();
        using var encoded = image.Encode(SKEncodedImageFormat.Jpeg, 95);
        var plain = encoded.ToArray();
        return [.. plain[..2], .. Segment(0xE1, Exif(orientation)), .. Segment(0xE1, [.. "http://ns.adobe.com/xap/1.0/\0<x GPSLatitude='59,54.785N'/>"u8]), .. plain[2..]];
    }

    /// <summary>Eight by eight pixels of four inks, each at half: one Huffman code, all coefficients zero.</summary>
    internal static byte[] CmykJpeg() =>
    [
        0xFF, 0xD8,
        .. Segment(0xEE, [.. "Adobe"u8, 0, 100, 0, 0, 0, 0, 0]),
        .. Segment(0xDB, [0, .. Enumerable.Repeat((byte)1, 64)]),
        .. Segment(0xC0, [8, 0, 8, 0, 8, 4, 1, 0x11, 0, 2, 0x11, 0, 3, 0x11, 0, 4, 0x11, 0]),
        .. Segment(0xC4, [0x00, 1, .. new byte[15], 0, 0x10, 1, .. new byte[15], 0]),
        .. Segment(0xDA, [4, 1, 0, 2, 0, 3, 0, 4, 0, 0, 63, 0]),
        0x00, 0xFF, 0xD9,
    ];

    /// <summary>A PNG of 16 bits a colour that claims a size, its pixels those of another.</summary>
    internal static byte[] Png16(uint claimedWidth, uint claimedHeight, int width = 4, int height = 4, bool isAnimated = false)
    {
        var header = new byte[13];
        BinaryPrimitives.WriteUInt32BigEndian(header, claimedWidth);
        BinaryPrimitives.WriteUInt32BigEndian(header.AsSpan(4), claimedHeight);
        (header[8], header[9]) = (16, 2);
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            for (var row = 0; row < height; row++)
            {
                zlib.Write([0, .. Enumerable.Repeat((byte)0x80, width * 6)]);
            }
        }

        return
        [
            0x89, .. "PNG\r\n"u8, 0x1A, 0x0A,
            .. Chunk("IHDR", header),
            .. isAnimated ? Chunk("acTL", [0, 0, 0, 2, 0, 0, 0, 0]) : [],
            .. Chunk("tEXt", [.. "Comment\0taken at 59 54 N"u8]),
            .. Chunk("IDAT", packed.ToArray()),
            .. Chunk("IEND", []),
        ];
    }

    private static byte[] Exif(ushort orientation)
    {
        // One directory with orientation and a pointer to that of GPS, which has latitude and its reference.
        var tiff = new List<byte>();
        tiff.AddRange("MM\0*"u8);
        tiff.AddRange(Convert.FromHexString("00000008" + "0002"));
        tiff.AddRange(Convert.FromHexString("0112" + "0003" + "00000001" + orientation.ToString("X4", System.Globalization.CultureInfo.InvariantCulture) + "0000"));
        tiff.AddRange(Convert.FromHexString("8825" + "0004" + "00000001" + "00000026" + "00000000"));
        tiff.AddRange(Convert.FromHexString("0002" + "0001" + "0002" + "00000002" + "4E000000" + "0002" + "0005" + "00000003" + "00000044" + "00000000"));
        tiff.AddRange(Latitude);
        return [.. "Exif\0\0"u8, .. tiff];
    }

    private static byte[] Segment(byte marker, byte[] content) => [0xFF, marker, (byte)((content.Length + 2) >> 8), (byte)(content.Length + 2), .. content];

    private static byte[] Chunk(string name, byte[] content)
    {
        byte[] named = [.. Encoding.ASCII.GetBytes(name), .. content];
        var (length, crc) = (new byte[4], new byte[4]);
        BinaryPrimitives.WriteUInt32BigEndian(length, (uint)content.Length);
        BinaryPrimitives.WriteUInt32BigEndian(crc, Crc32(named));
        return [.. length, .. named, .. crc];
    }

    private static uint Crc32(byte[] bytes)
    {
        var crc = uint.MaxValue;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc >> 1) ^ ((crc & 1) * 0xEDB88320u);
            }
        }

        return ~crc;
    }
}
