namespace Runup.Profiles;

/// <summary>What a drive answers when it is asked who it is (Modbus function 43/14, basic objects).</summary>
/// <param name="Vendor">Vendor name.</param>
/// <param name="Product">Product code.</param>
/// <param name="Revision">Revision.</param>
public sealed record DriveIdentity(string Vendor, string Product, string Revision);
