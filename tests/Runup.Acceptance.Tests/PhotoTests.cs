using System.Security.Cryptography;

namespace Runup.Acceptance.Tests;

/// <summary>Photos from the job's folder to the report.</summary>
public sealed class PhotoTests
{
    // One pixel, 8 bits, grey; put together by hand after ISO/IEC 15948.
    private static readonly byte[] Png = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==");

    [Fact]
    public async Task A_photo_is_kept_by_its_checksum_recorded_once_and_shown_in_the_report_itself()
    {
        using var scratch = new Scratch();
        await File.WriteAllBytesAsync(Path.Combine(scratch.Folder, "plate.png"), Png, TestContext.Current.CancellationToken);
        var job = scratch.DemoJob(text => text.Replace("{value: 7.5 kW, from: plate}", "{value: 7.5 kW, from: plate, photo: plate.png}", StringComparison.Ordinal));

        var first = await RunupProgram.Call(scratch.Folder, "handover", job, "--json", "--no-pdf");
        var second = await RunupProgram.Call(scratch.Folder, "handover", job, "--json", "--no-pdf");

        (first.Status, second.Status).ShouldBe((0, 0), first.Errors + second.Errors);
        var kept = Directory.GetFiles(Path.Combine(scratch.Folder, "photos")).ShouldHaveSingleItem();
        var bytes = await File.ReadAllBytesAsync(kept, TestContext.Current.CancellationToken);
        var sha256 = Convert.ToHexStringLower(SHA256.HashData(bytes));
        Path.GetFileName(kept).ShouldBe($"{sha256}.jpg");
        var bodies = HandoverTests.Bodies(Path.Combine(scratch.Folder, "runup.db")).Select(b => b.Body).Where(b => b.Contains("photo-kept", StringComparison.Ordinal)).ToList();
        var recorded = bodies.ShouldHaveSingleItem();
        recorded.ShouldContain(sha256);
        recorded.ShouldContain(Convert.ToHexStringLower(SHA256.HashData(Png)));
        var page = await File.ReadAllTextAsync(second.Json.GetProperty("report").GetString()!, TestContext.Current.CancellationToken);
        page.ShouldContain($"data:image/jpeg;base64,{Convert.ToBase64String(bytes)}");
    }

    [Fact]
    public async Task What_is_no_photo_is_refused_with_its_place_in_the_job()
    {
        using var scratch = new Scratch();
        scratch.Write("plate.png", "no photo");
        var job = scratch.DemoJob(text => text.Replace("{value: 7.5 kW, from: plate}", "{value: 7.5 kW, from: plate, photo: plate.png}", StringComparison.Ordinal));

        var run = await RunupProgram.Call(scratch.Folder, "handover", job);

        run.Status.ShouldBe(2);
        run.Errors.Trim().Split('\n').ShouldHaveSingleItem().ShouldContain("motor.plate.output.photo: the photo `plate.png`: it is neither JPEG nor PNG");
        run.ShowsNoInsides();
    }
}
