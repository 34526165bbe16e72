using System.Net;
using System.Net.Sockets;
using Runup.Modbus;
using Runup.Modbus.Serving;
using Runup.Modbus.Tcp;

namespace Runup.Bench.ModbusServer;

/// <summary>The model that was measured and not taken: a blocking thread for each connection. Only as much of a server as a measurement needs.</summary>
internal static class ThreadForEachConnection
{
    private const int StackBytes = 128 * 1024;

    public static int Start(UnitRouting routing)
    {
        var listener = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        listener.Bind(new IPEndPoint(IPAddress.Loopback, 0));
        listener.Listen(512);
        var server = new RequestServer(routing);
        Begin(() => Accept(listener, server));
        return ((IPEndPoint)listener.LocalEndPoint!).Port;
    }

    private static void Accept(Socket listener, RequestServer server)
    {
        while (true)
        {
            var socket = listener.Accept();
            socket.NoDelay = true;
            Begin(() => Serve(socket, server));
        }
    }

    private static void Serve(Socket socket, RequestServer server)
    {
        var received = new byte[ModbusLimits.TcpFrameLength];
        var reply = new byte[ModbusLimits.TcpFrameLength];
        var count = 0;
        while (true)
        {
            var arrived = socket.Receive(received.AsSpan(count), SocketFlags.None, out _);
            if (arrived == 0)
            {
                socket.Dispose();
                return;
            }

            count += arrived;
            var reading = TcpFrame.Read(received.AsSpan(0, count));
            while (reading.State == TcpFrameState.Whole)
            {
                var pdu = server.Answer(reading.Unit, reading.Pdu(received), reply.AsSpan(TcpFrame.HeaderLength));
                var length = TcpFrame.WriteHeader(reply, reading.Transaction, reading.Unit, pdu);
                socket.Send(reply.AsSpan(0, length));
                received.AsSpan(reading.Length, count - reading.Length).CopyTo(received);
                count -= reading.Length;
                reading = TcpFrame.Read(received.AsSpan(0, count));
            }
        }
    }

    private static void Begin(ThreadStart work) => new Thread(work, StackBytes) { IsBackground = true }.Start();
}
