using Runup.Engineering;

namespace Runup.Files.Listings.Eds;

/// <summary>A data type of CiA 301 as far as a register can hold it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Bits">How many bits; 0 where it is no number.</param>
/// <param name="Signed">Whether two's complement.</param>
[Source("cia301", "data type indexes")]
internal sealed record EdsType(string Name, int Bits, bool Signed)
{
    private static readonly Dictionary<long, EdsType> Known = new()
    {
        [0x01] = new("BOOLEAN", 1, false),
        [0x02] = new("INTEGER8", 8, true),
        [0x03] = new("INTEGER16", 16, true),
        [0x04] = new("INTEGER32", 32, true),
        [0x05] = new("UNSIGNED8", 8, false),
        [0x06] = new("UNSIGNED16", 16, false),
        [0x07] = new("UNSIGNED32", 32, false),
        [0x08] = new("REAL32", 0, true),
        [0x09] = new("VISIBLE_STRING", 0, false),
        [0x0A] = new("OCTET_STRING", 0, false),
        [0x0B] = new("UNICODE_STRING", 0, false),
        [0x0C] = new("TIME_OF_DAY", 0, false),
        [0x0D] = new("TIME_DIFFERENCE", 0, false),
        [0x0F] = new("DOMAIN", 0, false),
        [0x10] = new("INTEGER24", 24, true),
        [0x11] = new("REAL64", 0, true),
        [0x12] = new("INTEGER40", 40, true),
        [0x13] = new("INTEGER48", 48, true),
        [0x14] = new("INTEGER56", 56, true),
        [0x15] = new("INTEGER64", 64, true),
        [0x16] = new("UNSIGNED24", 24, false),
        [0x18] = new("UNSIGNED40", 40, false),
        [0x19] = new("UNSIGNED48", 48, false),
        [0x1A] = new("UNSIGNED56", 56, false),
        [0x1B] = new("UNSIGNED64", 64, false),
        [0x20] = new("PDO_COMMUNICATION_PARAMETER", 0, false),
        [0x21] = new("PDO_MAPPING", 0, false),
        [0x22] = new("SDO_PARAMETER", 0, false),
        [0x23] = new("IDENTITY", 0, false),
    };

    /// <summary>Whether a parameter of a profile can hold it.</summary>
    internal bool IsParameter => Bits is > 0 and <= 32;

    /// <summary>The type of an index, or null.</summary>
    internal static EdsType? Find(long index) => Known.GetValueOrDefault(index);

    /// <summary>A limit, which a signed type may have in two's complement.</summary>
    internal long Limit(long written) => Signed && Bits is > 0 and < 64 && written >= 1L << (Bits - 1) && written < 1L << Bits ? written - (1L << Bits) : written;
}
