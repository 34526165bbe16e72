using Runup.Cli.Terminal;
using Runup.Store;

namespace Runup.Cli.Entry;

/// <summary>Opens the record of a site for one call.</summary>
internal static class SiteRecords
{
    internal static SqliteRecords Open(string folder, TimeProvider? time = null) => SqliteRecords.Open(folder, time ?? TimeProvider.System) switch
    {
        StoreOpening.Opened opened => opened.Records,
        var not => throw new Complaint(ExitStatus.BadInput, $"runup: the record of {folder} can't be used: {not.What}"),
    };
}
