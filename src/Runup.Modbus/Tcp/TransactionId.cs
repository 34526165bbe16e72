namespace Runup.Modbus.Tcp;

/// <summary>Pairs a reply on TCP with its request; the server repeats it.</summary>
/// <param name="Value">The 16 bits on the wire.</param>
public readonly record struct TransactionId(ushort Value)
{
    /// <summary>The next one, beginning anew after 65,535.</summary>
    public TransactionId Next => new(unchecked((ushort)(Value + 1)));
}
