namespace Runup.Acceptance.Tests;

/// <summary>Whatever answers at the other end, the program ends soon, says why in a line, and writes nothing that it must not.</summary>
public sealed class HostileWireTests
{
    private static readonly string[] Confirmed = ["--by", "A. Tester", "--confirm", "safe-torque-off-open-or-motor-isolated", "--confirm", "no-run-command-pending"];

    private static readonly Dictionary<string, Func<byte[], byte[]?>> Ways = new(StringComparer.Ordinal)
    {
        ["silence"] = _ => null,
        ["noise"] = request => [.. Enumerable.Range(0, 300).Select(i => (byte)((i * 37) + request[1]))],
        ["another unit"] = request => [.. request[..6], (byte)(request[6] + 1), .. request[7..]],
        ["another transaction"] = request => [request[0], (byte)(request[1] + 1), .. request[2..]],
        ["half a frame"] = request => [.. request[..4], 0, 40, request[6], 3],
        ["exceptions"] = request => HostileDrive.Reply(request, (byte)(request[7] | 0x80), 2),
        ["always busy"] = request => HostileDrive.Reply(request, (byte)(request[7] | 0x80), 6),
    };

    public static TheoryData<string> WaysOf { get; } = [.. Ways.Keys];

    [Theory]
    [MemberData(nameof(WaysOf))]
    public async Task Whoever_gives_no_values_is_a_failed_link(string way)
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob();
        await using var drive = new HostileDrive(Ways[way]);
        var run = await RunupProgram.Call(scratch.Folder, "read", job, "--link", drive.Link);
        run.Status.ShouldBe(3);
        run.Output.ShouldBeEmpty();
        run.Errors.Trim().Split('\n').Length.ShouldBe(1);
        run.ShowsNoInsides();
        var entry = await RunupProgram.Call(scratch.Folder, ["enter", job, "--link", drive.Link, "--json", .. Confirmed]);
        entry.Status.ShouldBe(3);
        entry.Json.GetProperty("verified").GetInt32().ShouldBe(0);
        drive.Functions.ShouldNotContain(f => f == 6 || f == 16);
    }

    // Status words of IEC 61800-7-201: operation enabled, quick stop active, fault reaction active, and one that follows no pattern.
    [Theory]
    [InlineData(0x0237)]
    [InlineData(0x0217)]
    [InlineData(0x021F)]
    [InlineData(0x0005)]
    public async Task Nothing_is_written_to_a_drive_that_runs_or_whose_state_means_nothing(int status)
    {
        using var scratch = new Scratch();
        await using var drive = new HostileDrive(request => request[7] == 3
            ? HostileDrive.Registers(request, register => register is 1002 or 1009 ? (ushort)status : (ushort)0)
            : HostileDrive.Reply(request, (byte)(request[7] | 0x80), 1));
        var run = await RunupProgram.Call(scratch.Folder, ["enter", scratch.DemoJob(), "--link", drive.Link, "--json", .. Confirmed]);
        run.Status.ShouldBe(4);
        run.Json.GetProperty("written").GetInt32().ShouldBe(0);
        drive.Functions.ShouldNotContain(f => f == 6 || f == 16);
    }

    [Fact]
    public async Task What_a_drive_refuses_to_take_is_never_said_to_be_in_it()
    {
        using var scratch = new Scratch();
        await using var drive = new HostileDrive(request => request[7] == 3
            ? HostileDrive.Registers(request, _ => 0)
            : HostileDrive.Reply(request, (byte)(request[7] | 0x80), 1));
        var run = await RunupProgram.Call(scratch.Folder, ["enter", scratch.DemoJob(), "--link", drive.Link, .. Confirmed]);
        run.Status.ShouldBe(1);
        run.Output.ShouldContain("of them refused by the drive, 0 verified by read-back");
        run.Output.ShouldContain("NOT PROVED to be in the drive");
        run.Output.ShouldNotContain("all is in the drive");
        run.Errors.ShouldNotContain("all is in the drive");
        run.ShowsNoInsides();
    }

    [Fact]
    public async Task What_is_wrong_with_a_reply_is_said_in_words()
    {
        using var scratch = new Scratch();
        await using var drive = new HostileDrive(request => request[7] == 3 ? HostileDrive.Reply(request, 3, 2, 0) : HostileDrive.Reply(request, (byte)(request[7] | 0x80), 1));
        var run = await RunupProgram.Call(scratch.Folder, "read", scratch.DemoJob(), "--link", drive.Link);
        run.Status.ShouldBe(3);
        run.Errors.ShouldContain("the reply is malformed: its byte count does not agree with the registers asked for");
    }

    // Identification after the Modbus Application Protocol V1.1b3, clause 6.21, with an escape sequence in the vendor's name.
    [Fact]
    public async Task What_a_drive_says_it_is_moves_no_cursor()
    {
        using var scratch = new Scratch();
        await using var drive = new HostileDrive(request => request[7] == 3
            ? HostileDrive.Registers(request, _ => 0)
            : HostileDrive.Reply(request, [0x2B, 0x0E, 1, 1, 0, 0, 3, 0, 5, 0x1B, .. "[31m"u8, 1, 1, (byte)'b', 2, 1, (byte)'c']));
        var run = await RunupProgram.Call(scratch.Folder, "read", scratch.DemoJob(), "--link", drive.Link);
        run.Status.ShouldBe(0);
        run.Output.ShouldNotContain('\u001b');
        run.Output.ShouldContain("[31m");
    }
}
