using Runup.Files.Yaml;
using Runup.Profiles;

namespace Runup.Files.Profiles;

/// <summary>Reads what a drive answers when it is asked who it is.</summary>
internal static class IdentityReader
{
    internal static DriveIdentity? Read(MapReader? map)
    {
        if (map is null)
        {
            return null;
        }

        var vendor = map.Text("vendor", "the vendor's name would do");
        var product = map.Text("product", "the product code would do");
        var revision = map.Text("revision", "the revision, in quotes if it is a number, would do");
        map.Done();
        return vendor is null || product is null || revision is null ? null : new DriveIdentity(vendor, product, revision);
    }
}
