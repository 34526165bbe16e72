using System.Runtime.InteropServices;

namespace Runup.Modbus.Tcp;

/// <summary>Whether a whole frame has arrived.</summary>
public enum TcpFrameState
{
    /// <summary>More bytes are needed.</summary>
    Incomplete,

    /// <summary>The head can't be that of Modbus TCP; nothing that follows can be trusted.</summary>
    NotModbus,

    /// <summary>A whole frame is there.</summary>
    Whole,
}

/// <summary>What <see cref="TcpFrame.Read"/> found. The default is an incomplete frame.</summary>
[StructLayout(LayoutKind.Auto)]
public readonly record struct TcpFrameReading
{
    private TcpFrameReading(TcpFrameState state, TransactionId transaction, UnitId unit, int length)
    {
        State = state;
        Transaction = transaction;
        Unit = unit;
        Length = length;
    }

    /// <summary>Whether a whole frame has arrived.</summary>
    public TcpFrameState State { get; }

    /// <summary>The frame's transaction, when whole.</summary>
    public TransactionId Transaction { get; }

    /// <summary>The frame's unit, when whole.</summary>
    public UnitId Unit { get; }

    /// <summary>The frame's length with its head, when whole.</summary>
    public int Length { get; }

    internal static TcpFrameReading Incomplete => default;

    internal static TcpFrameReading NotModbus => new(TcpFrameState.NotModbus, default, default, 0);

    internal static TcpFrameReading Whole(TransactionId transaction, UnitId unit, int length) =>
        new(TcpFrameState.Whole, transaction, unit, length);

    /// <summary>The PDU of a whole frame.</summary>
    /// <param name="received">The bytes that were read.</param>
    public ReadOnlySpan<byte> Pdu(ReadOnlySpan<byte> received) =>
        State == TcpFrameState.Whole ? received[TcpFrame.HeaderLength..Length] : [];
}
