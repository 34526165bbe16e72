namespace Runup.Modbus;

/// <summary>Why a server refused a request. Any byte can arrive, so this is no enumeration; the default, 0, is not defined by the specification.</summary>
/// <param name="Value">The code on the wire.</param>
public readonly record struct ExceptionCode(byte Value)
{
    /// <summary>1: the function is not spoken here.</summary>
    public static ExceptionCode IllegalFunction { get; } = new(0x01);

    /// <summary>2: an address, or address with length, that is not there.</summary>
    public static ExceptionCode IllegalDataAddress { get; } = new(0x02);

    /// <summary>3: a value in the request, or its implied length, is not allowed.</summary>
    public static ExceptionCode IllegalDataValue { get; } = new(0x03);

    /// <summary>4: the server failed while doing it.</summary>
    public static ExceptionCode ServerDeviceFailure { get; } = new(0x04);

    /// <summary>5: accepted, and will take long.</summary>
    public static ExceptionCode Acknowledge { get; } = new(0x05);

    /// <summary>6: busy, ask again later.</summary>
    public static ExceptionCode ServerDeviceBusy { get; } = new(0x06);

    /// <summary>8: the memory's parity is wrong.</summary>
    public static ExceptionCode MemoryParityError { get; } = new(0x08);

    /// <summary>0A: the gateway has no path.</summary>
    public static ExceptionCode GatewayPathUnavailable { get; } = new(0x0A);

    /// <summary>0B: behind the gateway nobody answers under that unit identifier.</summary>
    public static ExceptionCode GatewayTargetDeviceFailedToRespond { get; } = new(0x0B);

    /// <summary>The specification's name for the code, or null for a code it does not define.</summary>
    public string? Name => Value switch
    {
        0x01 => "illegal function",
        0x02 => "illegal data address",
        0x03 => "illegal data value",
        0x04 => "server device failure",
        0x05 => "acknowledge",
        0x06 => "server device busy",
        0x07 => "negative acknowledge",
        0x08 => "memory parity error",
        0x0A => "gateway path unavailable",
        0x0B => "gateway target device failed to respond",
        _ => null,
    };

    /// <inheritdoc />
    public override string ToString() => Name is { } name ? $"{Value:X2} ({name})" : $"{Value:X2}";
}
