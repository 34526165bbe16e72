using Runup.Files.Jobs;

namespace Runup.Files.Tests.Photos;

public sealed class PhotosOfJobTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("runup-test-");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void A_datum_and_the_set_name_their_photos()
    {
        Put("plate.jpg", MadePhotos.JpegWithExif(80, 40, 1));
        Put("panel.png", MadePhotos.Png16(4, 4));

        var job = Read("{value: 7.5 kW, from: plate, photo: plate.jpg}", "photos: [{file: panel.png, note: door open}]").ShouldBeOfType<JobReading.Read>().Job;

        job.Motor.Plate.Output.Photo.ShouldBe("plate.jpg");
        job.Photos.ShouldHaveSingleItem().ShouldBe(new Commissioning.Survey.SetPhoto("panel.png", "door open"));
    }

    [Theory]
    [InlineData("notes.jpg", "the photo `notes.jpg`: it is neither JPEG nor PNG")]
    [InlineData("gone.jpg", "the photo `gone.jpg`: there is no such file")]
    [InlineData("../plate.jpg", "the file `../plate.jpg`")]
    [InlineData("/etc/passwd", "the file `/etc/passwd`")]
    [InlineData("link.jpg", "the file `link.jpg` is a link that leads out of the job's folder")]
    [InlineData("out/plate.jpg", "the file `out/plate.jpg` is a link that leads out of the job's folder")]
    public void What_is_no_photo_of_this_folder_is_refused_in_one_line_with_its_place(string name, string said)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links need a privilege there");
        using var elsewhere = new Elsewhere();
        Put("notes.jpg", "no photo"u8.ToArray());
        File.CreateSymbolicLink(Path.Combine(folder.FullName, "link.jpg"), elsewhere.Photo);
        Directory.CreateSymbolicLink(Path.Combine(folder.FullName, "out"), Path.GetDirectoryName(elsewhere.Photo)!);

        var problem = Read($"{{value: 7.5 kW, photo: {name}}}").ShouldBeOfType<JobReading.Faulty>().Problems.ShouldHaveSingleItem();

        problem.ToString().ShouldContain(said);
        problem.ToString().ShouldContain("job.yaml:5:");
        problem.ToString().ShouldContain(" motor.plate.output.photo: ");
    }

    [Fact]
    public void A_job_named_without_a_folder_is_read_where_the_person_stands() =>
        Read("{value: 7.5 kW, photo: gone.jpg}", "", "").ShouldBeOfType<JobReading.Faulty>().Problems.ShouldHaveSingleItem().ToString().ShouldContain("there is no such file");

    private JobReading Read(string output, string more = "", string? of = null) => JobFile.ReadText($$"""
        runup: 1
        tag: P-101
        supply: {voltage: 400 V, frequency: 50 Hz}
        motor:
          plate: {output: {{output}}, voltage: 400 V, current: 14.4 A, frequency: 50 Hz, speed: 1460 rpm}
        drive: {profile: tern, size: "7.5-400"}
        machine: {load: quadratic, torque: 42 N·m, at-speed: 1460 rpm}
        operation: {maximum-frequency: 50 Hz}
        {{more}}
        """, "p-101.job.yaml", of ?? folder.FullName);

    private void Put(string name, byte[] bytes) => File.WriteAllBytes(Path.Combine(folder.FullName, name), bytes);

    private sealed class Elsewhere : IDisposable
    {
        private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("runup-test-");

        public Elsewhere() => File.WriteAllBytes(Photo, MadePhotos.JpegWithExif(8, 8, 1));

        public string Photo => Path.Combine(folder.FullName, "plate.jpg");

        public void Dispose() => folder.Delete(recursive: true);
    }
}
