namespace Runup.Modbus.Identification;

/// <summary>Which category of identification a device has, and whether single objects may be asked for. Any byte can arrive; the default, 0, is not defined by the specification.</summary>
/// <param name="Value">The byte on the wire: 01h to 03h, or 81h to 83h with individual access.</param>
public readonly record struct ConformityLevel(byte Value)
{
    private const byte IndividualAccess = 0x80;

    /// <summary>Whether single objects may be asked for.</summary>
    public bool AllowsIndividualAccess => (Value & IndividualAccess) != 0;

    /// <summary>The highest category, or <see cref="ReadDeviceIdCode.None"/> for a level that is not defined.</summary>
    public ReadDeviceIdCode Category => (Value & ~IndividualAccess) switch
    {
        1 => ReadDeviceIdCode.Basic,
        2 => ReadDeviceIdCode.Regular,
        3 => ReadDeviceIdCode.Extended,
        _ => ReadDeviceIdCode.None,
    };

    /// <summary>The level of a device with stream and individual access.</summary>
    /// <param name="category">The highest category it has.</param>
    public static ConformityLevel WithIndividualAccess(ReadDeviceIdCode category) => new((byte)(IndividualAccess | (byte)category));
}
