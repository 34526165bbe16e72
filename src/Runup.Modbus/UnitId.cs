namespace Runup.Modbus;

/// <summary>The unit identifier of a server: 1 to 247 on a serial line; on TCP 0 and 255 mean "the device at this address itself". The default is 0.</summary>
/// <param name="Value">The byte on the wire.</param>
public readonly record struct UnitId(byte Value)
{
    /// <summary>The identifier recommended on TCP when there is no bridge to a serial line (255).</summary>
    public static UnitId TcpDevice { get; } = new(0xFF);

    /// <inheritdoc />
    public override string ToString() => $"{Value}";
}
