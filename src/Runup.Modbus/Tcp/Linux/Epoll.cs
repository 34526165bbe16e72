using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Runup.Modbus.Tcp.Linux;

/// <summary>What a descriptor is watched for.</summary>
[Flags]
internal enum Readiness
{
    None = 0,
    Readable = 1,
    Writable = 4,
}

/// <summary>A set of watched descriptors, each under a key, as long as it is ready (level-triggered).</summary>
internal sealed class Epoll : IDisposable
{
    private const int Add = 1;
    private const int Change = 3;
    private const int Capacity = 128;

    // The kernel packs the structure on x86 only: 4 bytes of events, then 8 of key.
    private static readonly int Stride = RuntimeInformation.ProcessArchitecture is Architecture.X64 or Architecture.X86 ? 12 : 16;
    private readonly SafeFileHandle _epoll = LibC.CreateEpoll();
    private readonly byte[] _events = new byte[Capacity * Stride];

    public void Watch(SafeHandle descriptor, ulong key, Readiness interest) => Control(Add, descriptor, key, interest);

    public void Rewatch(SafeHandle descriptor, ulong key, Readiness interest) => Control(Change, descriptor, key, interest);

    /// <summary>Waits until at least one descriptor is ready.</summary>
    /// <returns>How many are; their keys are to be had from <see cref="Key"/>.</returns>
    public int Wait()
    {
        while (true)
        {
            var count = LibC.epoll_wait(_epoll, _events, Capacity, -1);
            if (count >= 0)
            {
                return count;
            }

            if (Marshal.GetLastPInvokeError() != LibC.Interrupted)
            {
                throw new InvalidOperationException(Marshal.GetLastPInvokeErrorMessage());
            }
        }
    }

    public ulong Key(int index) => MemoryMarshal.Read<ulong>(_events.AsSpan((index * Stride) + Stride - sizeof(ulong)));

    public void Dispose() => _epoll.Dispose();

    private void Control(int operation, SafeHandle descriptor, ulong key, Readiness interest)
    {
        Span<byte> wanted = stackalloc byte[Stride];
        wanted.Clear();
        MemoryMarshal.Write(wanted, (uint)interest);
        MemoryMarshal.Write(wanted[(Stride - sizeof(ulong))..], key);
        if (LibC.epoll_ctl(_epoll, operation, descriptor, wanted) != 0)
        {
            throw new InvalidOperationException(Marshal.GetLastPInvokeErrorMessage());
        }
    }
}
