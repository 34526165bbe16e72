using System.Text.Json;
using Runup.Modbus;
using Runup.Modbus.Serving;
using Runup.Modbus.Tcp;
using Runup.SimulatedDrive.Clock;

namespace Runup.Outside.Tests.Modbus;

/// <summary>Our server asked by an independent client: pymodbus, from Debian's python3-pymodbus.</summary>
public sealed class PymodbusTests
{
    [Theory]
    [InlineData(ServerThreading.ReadinessLoop)]
    [InlineData(ServerThreading.ThreadPool)]
    public async Task Independent_client_understands_every_reply(ServerThreading threading)
    {
        var python = await PythonWithPymodbusAsync();
        Assert.SkipUnless(python is not null, "pymodbus is not installed: apt-get install python3-pymodbus");
        await using var server = ModbusTcpServer.Start(
            UnitRouting.Device(new RegisterBank(), new UnitId(17)), new ModbusTcpServerOptions { Threading = threading })
            .ShouldBeOfType<ServerStart.Listening>().Server;

        var script = Path.Combine(AppContext.BaseDirectory, "Modbus", "pymodbus_client.py");
        var run = (await OtherProgram.RunAsync(python, script, $"{server.Endpoint.Port}", "17")).ShouldNotBeNull();
        run.Status.ShouldBe(0, run.Errors);
        using var said = JsonDocument.Parse(run.Output);
        string Said(string name) => said.RootElement.GetProperty(name).GetRawText();

        Said("write_one").ShouldBe("""{"written": true}""");
        Said("write_many").ShouldBe("""{"written": true}""");
        Said("read_back").ShouldBe("""{"registers": [42, 1, 65535]}""");
        Said("read_input").ShouldBe("""{"registers": [1008, 1009]}""");
        Said("read_write").ShouldBe("""{"registers": [42, 9, 65535]}""");
        said.RootElement.GetProperty("read_most").GetProperty("registers").GetArrayLength().ShouldBe(125);
        Said("write_most").ShouldBe("""{"written": true}""");
        Said("read_beyond").ShouldBe("""{"exception": 2}""");
        Said("write_beyond").ShouldBe("""{"exception": 2}""");
        Said("write_refused").ShouldBe("""{"exception": 3}""");
        Said("coils").ShouldBe("""{"exception": 1}""");
        Said("basic").ShouldBe("""{"objects": {"0": "Invented Works", "1": "BANK", "2": "V1.0"}, "conformity": 131, "more": 0, "next": 0}""");
        said.RootElement.GetProperty("regular").GetProperty("objects").GetProperty("4").GetString().ShouldBe("Register bank");
        said.RootElement.GetProperty("extended").GetProperty("objects").GetProperty("128").GetString().ShouldBe("serial 17");
        Said("one").ShouldBe("""{"objects": {"4": "Register bank"}, "conformity": 131, "more": 0, "next": 0}""");
        Said("one_missing").ShouldBe("""{"exception": 2}""");
    }

    [Fact]
    public async Task Independent_client_works_the_simulated_drive_as_a_control_system_would()
    {
        var python = await PythonWithPymodbusAsync();
        Assert.SkipUnless(python is not null, "pymodbus is not installed: apt-get install python3-pymodbus");
        using var time = new PacedTime(1, TimeProvider.System);
        await using var host = SimulatedPump.Start(time);

        var script = Path.Combine(AppContext.BaseDirectory, "Modbus", "pymodbus_drive.py");
        var run = (await OtherProgram.RunAsync(python, script, $"{host.Endpoint.Port}", "1")).ShouldNotBeNull();
        run.Status.ShouldBe(0, run.Errors);
        using var said = JsonDocument.Parse(run.Output);
        string Said(string name) => said.RootElement.GetProperty(name).GetRawText();

        // 32 bit, low word first: 5.00 s is 500, 2.00 s is 200.
        Said("voltage").ShouldBe("[400]");
        Said("acceleration").ShouldBe("[500, 0]");
        Said("refused_range").ShouldBe("3");
        Said("refused_half").ShouldBe("2");
        Said("set_up").ShouldBe("[0, 0, 0]");
        Said("acceleration_now").ShouldBe("[200, 0]");

        // Patterns of IEC 61800-7-201: switch on disabled x1xx 0000, operation enabled x01x 0111.
        (said.RootElement.GetProperty("status_before").GetInt32() & 0x4F).ShouldBe(0x40);
        Said("status_running").ShouldBe("39");
        Said("frequency").ShouldBe("1000");
        Said("refused_running").ShouldBe("4");
        Said("stopped").ShouldBe("0");
    }

    // Debian's package belongs to Debian's interpreter, which need not be the first on the path.
    private static async Task<string?> PythonWithPymodbusAsync()
    {
        foreach (var python in new[] { "/usr/bin/python3", "python3" })
        {
            if (await OtherProgram.RunAsync(python, "-c", "import pymodbus") is { Status: 0 })
            {
                return python;
            }
        }

        return null;
    }
}
