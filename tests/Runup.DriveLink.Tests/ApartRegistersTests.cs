using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Tests.Bench;
using Runup.Commissioning.Tests.Contract;
using Runup.Modbus;
using Runup.Modbus.Serving;
using Runup.Modbus.Tcp;
using Runup.Profiles;

namespace Runup.DriveLink.Tests;

/// <summary>A make whose command word and reference do not adjoin: which of the two goes first, and what still goes when the other is refused.</summary>
public sealed class ApartRegistersTests
{
    private const ushort Word = 1000;
    private const ushort Reference = 1100;

    [Fact]
    public async Task A_run_command_sends_the_reference_first()
    {
        var device = new Recorder();
        await Sends(device, Run);
        device.Written.ShouldBe([(Reference, 500), (Word, 0x0F)]);
    }

    [Fact]
    public async Task Without_its_reference_no_run_command_is_sent()
    {
        var device = new Recorder { Refused = Reference };
        await Sends(device, Run);
        device.Written.ShouldBe([(Reference, 500)]);
    }

    [Theory]
    [InlineData(true, 0x07)]
    [InlineData(false, 0x00)]
    public async Task A_stop_sends_the_word_first(bool byRamp, int word)
    {
        var device = new Recorder();
        await Sends(device, link => link.Command(byRamp ? new LinkCommand.Stop() : new LinkCommand.Coast(), default));
        device.Written.ShouldBe([(Word, word), (Reference, 0)]);
    }

    [Fact]
    public async Task A_stop_goes_out_although_the_reference_is_refused()
    {
        var device = new Recorder { Refused = Reference };
        await Sends(device, link => link.Command(new LinkCommand.Stop(), default));
        device.Written[0].ShouldBe((Word, 0x07));
    }

    private static async Task<LinkReply<Written>> Run(IDriveLink link)
    {
        using var hold = new RunHold(TimeProvider.System);
        var permit = await Permits.For(hold, Rotation.Forward, TimeProvider.System);
        return await link.Command(((RunAnswer.Granted)permit.Ask(5)).Command, default);
    }

    private static async Task Sends(Recorder device, Func<IDriveLink, Task> act)
    {
        var profile = BenchMake.Profile;
        var apart = new DriveProfile(profile.Parameters)
        {
            Family = profile.Family,
            Title = profile.Title,
            Sizes = profile.Sizes,
            Command = profile.Command! with { Reference = profile.Command.Reference with { Register = Reference } },
        };
        await using var server = ((ServerStart.Listening)ModbusTcpServer.Start(UnitRouting.Device(device, new UnitId(1)), new ModbusTcpServerOptions())).Server;
        var links = new ModbusDriveLinks(new("127.0.0.1", server.Endpoint.Port, 1), apart, TimeProvider.System);
        await using var link = (await links.Open(default)).ShouldBeOfType<LinkOpening.Opened>().Link;
        await act(link);
    }

    private sealed class Recorder : IModbusDevice
    {
        internal List<(ushort Register, int Value)> Written { get; } = [];

        internal ushort? Refused { get; init; }

        public DeviceAnswer WriteRegister(RegisterAddress address, ushort value)
        {
            Written.Add((address.Value, value));
            return address.Value == Refused ? DeviceAnswer.Refused(ExceptionCode.IllegalDataValue) : DeviceAnswer.Done;
        }
    }
}
