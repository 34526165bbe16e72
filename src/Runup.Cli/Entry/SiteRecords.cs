using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Handover;
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

    /// <summary>What the record tells of a set, without a change to it; of a site without record, nothing.</summary>
    internal static async Task<RecordStory> StoryOf(LoadedJob job, CancellationToken cancellation)
    {
        switch (SqliteRecords.Open(job.Folder, TimeProvider.System, StoreUse.ReadOnly))
        {
            case StoreOpening.Opened opened:
                using (opened.Records)
                {
                    return RecordStory.Of(await opened.Records.Of(job.Job.Tag, cancellation));
                }

            case StoreOpening.Absent:
                return new RecordStory();
            case var not:
                throw new Complaint(ExitStatus.BadInput, $"runup: the record of {job.Folder} can't be used: {not.What}");
        }
    }
}
