using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Runup.Modbus.Tcp.Linux;

/// <summary>The few calls of the C library that the readiness loop needs. The numbers are those of Linux on every processor .NET runs on.</summary>
internal static partial class LibC
{
    public const int Interrupted = 4;
    public const int WouldBlock = 11;
    private const int CloseOnExec = 0x80000;
    private const int NonBlocking = 0x800;
    private const int DoNotWait = 0x40;
    private const int NoSignal = 0x4000;
    private const int OpenFiles = 7;

    /// <summary>Whether the library is to be had under its usual name.</summary>
    public static bool IsThere => NativeLibrary.TryLoad("libc", typeof(LibC).Assembly, null, out _);

    /// <summary>How many descriptors this process may have open.</summary>
    public static int DescriptorLimit
    {
        get
        {
            // Two numbers of the processor's word size: the limit in force, and how far it may be raised.
            Span<ulong> limits = stackalloc ulong[2];
            return Environment.Is64BitProcess && getrlimit(OpenFiles, limits) == 0
                ? (int)Math.Min(limits[0], int.MaxValue)
                : int.MaxValue;
        }
    }

    public static SafeFileHandle CreateEpoll() => Owned(epoll_create1(CloseOnExec));

    public static SafeFileHandle CreateEvent() => Owned(eventfd(0, CloseOnExec | NonBlocking));

    public static int Receive(SafeHandle socket, Span<byte> bytes) => (int)recv(socket, bytes, (nuint)bytes.Length, DoNotWait);

    public static int Send(SafeHandle socket, ReadOnlySpan<byte> bytes) => (int)send(socket, bytes, (nuint)bytes.Length, DoNotWait | NoSignal);

    public static void Raise(SafeHandle wakeUp)
    {
        // The counter can only be full if it was raised 2^64 times without the loop looking: then it is raised already.
        _ = write(wakeUp, BitConverter.GetBytes(1UL), sizeof(ulong));
    }

    public static void Clear(SafeHandle wakeUp)
    {
        Span<byte> count = stackalloc byte[sizeof(ulong)];
        _ = read(wakeUp, count, sizeof(ulong));
    }

    [LibraryImport("libc", SetLastError = true)]
    internal static partial int epoll_ctl(SafeHandle epoll, int operation, SafeHandle descriptor, ReadOnlySpan<byte> interest);

    [LibraryImport("libc", SetLastError = true)]
    internal static partial int epoll_wait(SafeHandle epoll, Span<byte> events, int capacity, int timeoutMilliseconds);

    private static SafeFileHandle Owned(int descriptor) => descriptor >= 0
        ? new SafeFileHandle(descriptor, ownsHandle: true)
        : throw new InvalidOperationException($"The system has no readiness loop to give: {Marshal.GetLastPInvokeErrorMessage()}");

    [LibraryImport("libc", SetLastError = true)]
    private static partial int epoll_create1(int flags);

    [LibraryImport("libc", SetLastError = true)]
    private static partial int eventfd(uint initial, int flags);

    [LibraryImport("libc", SetLastError = true)]
    private static partial int getrlimit(int resource, Span<ulong> limits);

    [LibraryImport("libc", SetLastError = true)]
    private static partial nint recv(SafeHandle socket, Span<byte> bytes, nuint length, int flags);

    [LibraryImport("libc", SetLastError = true)]
    private static partial nint send(SafeHandle socket, ReadOnlySpan<byte> bytes, nuint length, int flags);

    [LibraryImport("libc", SetLastError = true)]
    private static partial nint write(SafeHandle descriptor, ReadOnlySpan<byte> bytes, nuint length);

    [LibraryImport("libc", SetLastError = true)]
    private static partial nint read(SafeHandle descriptor, Span<byte> bytes, nuint length);
}
