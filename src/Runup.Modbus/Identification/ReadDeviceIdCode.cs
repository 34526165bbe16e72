namespace Runup.Modbus.Identification;

/// <summary>How much of a device's identification is asked for (Modbus Application Protocol V1.1b3, clause 6.21).</summary>
public enum ReadDeviceIdCode
{
    /// <summary>Not a code of the specification.</summary>
    None = 0,

    /// <summary>The three mandatory objects, as a stream.</summary>
    Basic = 1,

    /// <summary>Basic, and the optional objects below 80h, as a stream.</summary>
    Regular = 2,

    /// <summary>Regular, and the device's own objects from 80h, as a stream.</summary>
    Extended = 3,

    /// <summary>One named object.</summary>
    Individual = 4,
}
