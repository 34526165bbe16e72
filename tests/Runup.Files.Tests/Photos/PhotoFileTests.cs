using System.Diagnostics;
using Runup.Files.Photos;
using SkiaSharp;

namespace Runup.Files.Tests.Photos;

public sealed class PhotoFileTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("runup-test-");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void Where_it_was_taken_is_gone_and_all_else_that_the_file_said()
    {
        var original = MadePhotos.JpegWithExif(80, 40, 1);
        Find(original, MadePhotos.Latitude).ShouldBeTrue();

        var jpeg = Taken(original).Jpeg.ToArray();

        Find(jpeg, MadePhotos.Latitude).ShouldBeFalse();
        foreach (var word in (string[])["Exif", "GPS", "59,54", "ns.adobe"])
        {
            Find(jpeg, System.Text.Encoding.ASCII.GetBytes(word)).ShouldBeFalse(word);
        }
    }

    /// <summary>Orientation as Exif 2.3 defines tag 0112h: which side of the stored picture is up.</summary>
    [Theory]
    [InlineData(1, 80, 40, "left")]
    [InlineData(2, 80, 40, "right")]
    [InlineData(3, 80, 40, "right")]
    [InlineData(4, 80, 40, "left")]
    [InlineData(5, 40, 80, "top")]
    [InlineData(6, 40, 80, "top")]
    [InlineData(7, 40, 80, "bottom")]
    [InlineData(8, 40, 80, "bottom")]
    public void It_stands_upright(ushort orientation, int width, int height, string redSide)
    {
        var photo = Taken(MadePhotos.JpegWithExif(80, 40, orientation));

        (photo.Width, photo.Height).ShouldBe((width, height));
        using var bitmap = SKBitmap.Decode(photo.Jpeg.ToArray());
        var (x, y) = redSide switch
        {
            "left" => (5, height / 2),
            "right" => (width - 5, height / 2),
            "top" => (width / 2, 5),
            _ => (width / 2, height - 5),
        };
        bitmap.GetPixel(x, y).Red.ShouldBeGreaterThan((byte)200);
        bitmap.GetPixel(width - 1 - x, height - 1 - y).Blue.ShouldBeGreaterThan((byte)200);
    }

    [Fact]
    public void A_large_one_is_made_as_small_as_a_report_needs()
    {
        var photo = Taken(MadePhotos.JpegWithExif(4000, 3000, 1));

        (photo.Width, photo.Height).ShouldBe((1600, 1200));
    }

    [Fact]
    public void A_small_one_stays_as_it_is() => (Taken(MadePhotos.JpegWithExif(80, 40, 1)) is { Width: 80, Height: 40 }).ShouldBeTrue();

    [Fact]
    public void Sixteen_bits_a_colour_four_inks_and_moving_pictures_are_taken()
    {
        using var grey = SKBitmap.Decode(Taken(MadePhotos.Png16(4, 4)).Jpeg.ToArray());
        ((int)grey.GetPixel(2, 2).Green).ShouldBeInRange(125, 131);
        Taken(MadePhotos.Png16(4, 4, isAnimated: true)).Width.ShouldBe(4);
        Taken(MadePhotos.CmykJpeg()).Width.ShouldBe(8);
    }

    [Theory]
    [InlineData(60_000, 60_000)]
    [InlineData(20_001, 1)]
    [InlineData(10_000, 10_000)]
    [InlineData(2_000_000_000, 2)]
    public void A_size_that_no_camera_makes_is_refused_before_anything_is_decoded(uint width, uint height)
    {
        var before = Process.GetCurrentProcess().PeakWorkingSet64;

        Refused(MadePhotos.Png16(width, height)).ShouldBeOneOf(
            $"it claims {width} by {height} pixels; no more than 20000 on a side and 80 million in all are decoded", "it is neither JPEG nor PNG");
        (Process.GetCurrentProcess().PeakWorkingSet64 - before).ShouldBeLessThan(100_000_000);
    }

    [Theory]
    [InlineData("GIF89a\u0001\0\u0001\0\0\0\0;")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'/>")]
    [InlineData("runup: 1\ntag: P-101\n")]
    public void What_is_neither_JPEG_nor_PNG_is_refused(string content) => Refused([.. content.Select(c => (byte)c)]).ShouldBe("it is neither JPEG nor PNG");

    [Fact]
    public void One_that_breaks_off_is_refused()
    {
        var whole = MadePhotos.JpegWithExif(400, 300, 1);

        Refused(whole[..(whole.Length / 2)]).ShouldBe("it is damaged, or breaks off before its end");
        Refused(whole[..20]).ShouldBe("it is neither JPEG nor PNG");
    }

    [Fact]
    public void Nothing_a_folder_and_an_empty_file_are_no_photos()
    {
        PhotoFile.Read(Path.Combine(folder.FullName, "none.jpg")).ShouldBe(new PhotoReading.Refused("there is no such file"));
        PhotoFile.Read(folder.FullName).ShouldBeOfType<PhotoReading.Refused>();
        Refused([]).ShouldBe("it can't be read: it is empty");
    }

    private PhotoReading.Taken Taken(byte[] bytes) => PhotoFile.Read(File(bytes)).ShouldBeOfType<PhotoReading.Taken>();

    private string Refused(byte[] bytes) => PhotoFile.Read(File(bytes)).ShouldBeOfType<PhotoReading.Refused>().Why;

    private string File(byte[] bytes)
    {
        var file = Path.Combine(folder.FullName, "photo");
        System.IO.File.WriteAllBytes(file, bytes);
        return file;
    }

    private static bool Find(byte[] all, byte[] part) => all.AsSpan().IndexOf(part) >= 0;
}
