namespace Runup.Modbus;

/// <summary>A register's address as it stands in the frame, counted from 0. The default is address 0.</summary>
/// <param name="Value">The 16 bits on the wire.</param>
public readonly record struct RegisterAddress(ushort Value)
{
    /// <inheritdoc />
    public override string ToString() => $"{Value}";
}
