using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.Handover;

/// <summary>Tells whether a reading in a record was taken of a drive of a family: a set's drive may have been swapped for another make since.</summary>
public static class ReadOf
{
    /// <summary>Whether it was: the profile knows every number, and the drive said the name that the profile states. A revision may differ.</summary>
    public static bool Family(RecordBody.ParametersRead read, DriveProfile profile)
    {
        ArgumentNullException.ThrowIfNull(read);
        ArgumentNullException.ThrowIfNull(profile);
        return read.Values.Keys.All(number => profile.Find(number) is not null)
            && (profile.Identity is not { } says || read.Identity.StartsWith($"{says.Vendor} {says.Product}".Trim(), StringComparison.Ordinal));
    }
}
