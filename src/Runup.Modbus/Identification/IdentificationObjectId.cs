namespace Runup.Modbus.Identification;

/// <summary>Names one object of a device's identification. The default is the vendor's name, object 0.</summary>
/// <param name="Value">The byte on the wire.</param>
public readonly record struct IdentificationObjectId(byte Value)
{
    /// <summary>0, basic.</summary>
    public static IdentificationObjectId VendorName { get; } = new(0x00);

    /// <summary>1, basic.</summary>
    public static IdentificationObjectId ProductCode { get; } = new(0x01);

    /// <summary>2, basic.</summary>
    public static IdentificationObjectId MajorMinorRevision { get; } = new(0x02);

    /// <summary>3, regular.</summary>
    public static IdentificationObjectId VendorUrl { get; } = new(0x03);

    /// <summary>4, regular.</summary>
    public static IdentificationObjectId ProductName { get; } = new(0x04);

    /// <summary>5, regular.</summary>
    public static IdentificationObjectId ModelName { get; } = new(0x05);

    /// <summary>6, regular.</summary>
    public static IdentificationObjectId UserApplicationName { get; } = new(0x06);

    /// <summary>The smallest category that holds the object.</summary>
    public ReadDeviceIdCode Category => Value switch
    {
        <= 0x02 => ReadDeviceIdCode.Basic,
        <= 0x7F => ReadDeviceIdCode.Regular,
        _ => ReadDeviceIdCode.Extended,
    };

    /// <inheritdoc />
    public override string ToString() => $"{Value:X2}h";
}
