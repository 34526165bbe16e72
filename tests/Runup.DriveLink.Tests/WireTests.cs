using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Tests.Bench;
using Runup.Commissioning.Tests.Contract;
using Runup.Modbus;
using Runup.Profiles;

namespace Runup.DriveLink.Tests;

/// <summary>
/// Frames written by hand, since link and drive of these tests read the same profile and would agree on a wrong one.
/// Layout: Modbus Messaging on TCP/IP V1.0b (header: transaction, protocol 0, length, unit) and Modbus Application Protocol V1.1b3
/// (functions 6 and 16); control words: IEC 61800-7-201. The transaction number is left out.
/// </summary>
public sealed class WireTests
{
    // Register 170 = 00AAh; 70,000 = 0001_1170h, low word first.
    [Fact]
    public Task A_32_bit_value_low_word_first() => Sends(link => link.Write(BenchMake.Of("170"), 70_000, default), "0000 000B 01 10 00AA 0002 04 1170 0001");

    // Register 180 = 00B4h; -15 in two's complement = FFF1h.
    [Fact]
    public Task A_value_below_zero_in_twos_complement() => Sends(link => link.Write(BenchMake.Of("180"), -15, default), "0000 0006 01 06 00B4 FFF1");

    // Register 900 = 0384h.
    [Fact]
    public Task Store() => Sends(link => link.Store(default), "0000 0006 01 06 0384 0001");

    // Register 1000 = 03E8h; switch on without enable operation 0007h; reference 0.
    [Fact]
    public Task Stop() => Sends(link => link.Command(new LinkCommand.Stop(), default), "0000 000B 01 10 03E8 0002 04 0007 0000");

    // Disable voltage 0000h.
    [Fact]
    public Task Coast() => Sends(link => link.Command(new LinkCommand.Coast(), default), "0000 000B 01 10 03E8 0002 04 0000 0000");

    // Enable operation 000Fh; 5 Hz in hundredths = 500 = 01F4h.
    [Fact]
    public Task Run_forward() => Sends(link => Run(link, Rotation.Forward, 5), "0000 000B 01 10 03E8 0002 04 000F 01F4");

    // The maker's bit 11, 0800h, reverses.
    [Fact]
    public Task Run_in_reverse() => Sends(link => Run(link, Rotation.Reverse, -5), "0000 000B 01 10 03E8 0002 04 080F 01F4");

    // 1002 = 03EAh, nine registers by function 3.
    [Fact]
    public Task State_and_readings() => Sends(link => link.Status(default), "0000 0006 01 03 03EA 0009");

    private static async Task<LinkReply<Written>> Run(IDriveLink link, Rotation rotation, double hz)
    {
        using var hold = new RunHold(TimeProvider.System);
        var permit = await Permits.For(hold, rotation, TimeProvider.System);
        return await link.Command(((RunAnswer.Granted)permit.Ask(hz)).Command, default);
    }

    private static async Task Sends<T>(Func<IDriveLink, Task<T>> act, string frame)
    {
        List<string> sent = [];
        await using var bench = await ModbusBench.Start((direction, _, bytes) =>
        {
            if (direction == FrameDirection.Sent)
            {
                sent.Add(Convert.ToHexString(bytes[2..]));
            }
        });
        bench.Drive.Held = bench.Drive.Held.With("220", 5).With("221", 3);
        await act(bench.Link);
        sent.ShouldBe([frame.Replace(" ", "")]);
    }
}
