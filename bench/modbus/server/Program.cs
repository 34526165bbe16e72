using Runup.Bench.ModbusServer;
using Runup.Modbus.Serving;
using Runup.Modbus.Tcp;

// Serves registers on a free port of the loopback, prints the port, and ends when told to, or by itself after an hour.
var longest = TimeSpan.FromHours(1);
var routing = UnitRouting.Any(new CountingBank());
ServerThreading threading;
switch (args)
{
    case [] or ["automatic"]:
        threading = ServerThreading.Automatic;
        break;
    case ["readiness"]:
        threading = ServerThreading.ReadinessLoop;
        break;
    case ["thread-pool"]:
        threading = ServerThreading.ThreadPool;
        break;
    case ["thread-each"]:
        Console.WriteLine(ThreadForEachConnection.Start(routing));
        await Task.Delay(longest);
        return 0;
    default:
        Console.Error.WriteLine("automatic, readiness, thread-pool or thread-each");
        return 2;
}

if (ModbusTcpServer.Start(routing, new ModbusTcpServerOptions { Threading = threading, DeviceFailed = Console.Error.WriteLine }) is not ServerStart.Listening(var server))
{
    Console.Error.WriteLine("no port to be had");
    return 1;
}

await using (server)
{
    Console.WriteLine(server.Endpoint.Port);
    await Task.Delay(longest);
}

return 0;
