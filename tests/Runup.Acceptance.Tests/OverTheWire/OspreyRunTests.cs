using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;

namespace Runup.Acceptance.Tests.OverTheWire;

/// <summary>A drive of another way of thinking is entered, proved after power-off and run by its own frames.</summary>
[Collection("real time")]
public sealed class OspreyRunTests
{
    // Written by hand: 6042h at register 4, 6040h at 0, 32 bits with the high word first. With four poles 10 Hz are 300 rpm (12Ch)
    // and 5 Hz 150 rpm (96h). In velocity mode the ramp follows with bits 4 to 6: 7Fh (IEC 61800-7-201).
    private const string Run = "10 0000 0002 04 0000 007F";
    private const string TenHertz = "10 0004 0002 04 0000 012C";
    private const string FiveHertz = "10 0004 0002 04 0000 0096";
    private const string Stop = "10 0000 0002 04 0000 0007";
    private const string Nothing = "10 0004 0002 04 0000 0000";

    // "save", its first letter in the lowest byte (CiA 301), to register 68.
    private const string Store = "10 0044 0002 04 6576 6173";

    [Fact]
    public async Task It_is_entered_proved_and_run_to_10_Hz()
    {
        await using var site = new WireSite("osprey");
        var person = new TestPerson(site.Host) { StopsAt = "", StopsBefore = "uncoupled-range" };
        var entry = await site.Enter(person);
        entry.Ending.ShouldBeOfType<EntryEnding.Finished>();
        entry.Failed.ShouldBeEmpty();
        entry.PowerCycle.ShouldBe(PowerCycleProof.Proved);
        site.Writes().ShouldContain(Store);

        var report = await site.FirstRun(person);
        report.Ending.ShouldBeOfType<FirstRunEnding.RefusedForSafety>().Why.ShouldContain("the test ends here");
        report.Proof.ShouldNotBeNull();
        report.NotPutBack.ShouldBeEmpty();
        var ten = report.Steps.Single(s => s.Step == "uncoupled-10-hz");
        ten.Outcome.ShouldBe("passed");
        ten.Readings.Single(r => r.Quantity.StartsWith("output frequency", StringComparison.Ordinal)).Measured!.Value.ShouldBe(10, 0.05);
        ten.Readings.Single(r => r.Quantity.StartsWith("speed", StringComparison.Ordinal)).Measured!.Value.ShouldBe(300, 5);
        ten.Readings.ShouldContain(r => r.Quantity.StartsWith("output current", StringComparison.Ordinal));

        // Its current is per mille of 6075h, which nothing else reads before the first look.
        report.Steps.Single(s => s.Step == "standstill").Readings.Single(r => r.Quantity == "output current").Measured.ShouldBe(0);

        // The target before each run command; the stop before everything else.
        var writes = site.Writes();
        var runs = writes.Index().Where(w => w.Item == Run).ToList();
        runs.ShouldAllBe(w => writes[w.Index - 1] == TenHertz || writes[w.Index - 1] == FiveHertz);
        runs.ShouldContain(w => writes[w.Index - 1] == TenHertz);
        var end = runs[^1].Index;
        writes[end + 1].ShouldBe(Stop);
        writes[end + 2].ShouldBe(Nothing);
    }
}
