using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.Entry;

/// <summary>Reads all that a drive keeps, and keeps it in the record: as found, where it was never read before. Writes nothing.</summary>
public static class ReadDrive
{
    /// <summary>Reads on one link.</summary>
    public static async Task<DriveRead> Run(string tag, DriveProfile profile, IDriveLinks links, IRecords records, CancellationToken cancellation)
    {
        switch (await links.Open(cancellation))
        {
            case LinkOpening.Failed failed:
                return new DriveRead.NoLink(failed.Why);
            case LinkOpening.Opened opened:
                await using (opened.Link)
                {
                    return await Read(tag, profile, opened.Link, records, cancellation);
                }

            default:
                throw new InvalidOperationException("The set of openings is closed.");
        }
    }

    private static async Task<DriveRead> Read(string tag, DriveProfile profile, IDriveLink link, IRecords records, CancellationToken cancellation)
    {
        var (identity, lost) = await EntrySession.WhoIs(link, cancellation);
        if (lost is not null)
        {
            return new DriveRead.NoLink(lost);
        }

        var (values, gone) = await link.ReadKept([.. profile.Parameters.Where(p => p.IsKept)], cancellation);
        if (values is null)
        {
            return new DriveRead.NoLink(gone!);
        }

        var history = EntryHistory.Of(await records.Of(tag, cancellation));
        var moment = history.AsFound.ContainsKey(identity) ? Moments.Read : Moments.AsFound;
        await records.Append(tag, new RecordBody.ParametersRead(moment, identity, values), cancellation);
        return new DriveRead.Read(identity, moment, values);
    }
}

/// <summary>What came of reading a drive; a closed set.</summary>
public abstract record DriveRead
{
    private DriveRead()
    {
    }

    /// <summary>It was read, and is kept in the record.</summary>
    /// <param name="Identity">What the drive says it is.</param>
    /// <param name="Moment">As what it is kept.</param>
    /// <param name="Values">Raw value by parameter number; null where the drive does not give it.</param>
    public sealed record Read(string Identity, string Moment, IReadOnlyDictionary<string, long?> Values) : DriveRead;

    /// <summary>A person broke the look at the display off; what was seen is on record, and another call goes on.</summary>
    /// <param name="Of">How many parameters it is about.</param>
    public sealed record BrokenOff(int Of) : DriveRead;

    /// <summary>The link failed.</summary>
    /// <param name="Why">Why, in words.</param>
    public sealed record NoLink(string Why) : DriveRead;
}
