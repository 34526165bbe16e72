using Microsoft.Data.Sqlite;
using Runup.Commissioning.Records;
using Runup.Store.Chain;
using Runup.Store.Folder;

namespace Runup.Store.Opening;

/// <summary>The steps from a folder to an open record.</summary>
internal static class RecordOpening
{
    public static StoreOpening Open(string folder, TimeProvider time, StoreUse use)
    {
        ArgumentNullException.ThrowIfNull(time);
        WriterLock? writer = null;
        StoreOpening? opening = null;
        try
        {
            if (Before(folder, use) is { } objection)
            {
                return objection;
            }

            if (use == StoreUse.Append && (writer = WriterLock.TryTake(SiteRecord.LockIn(folder))) is null)
            {
                return new StoreOpening.InUse($"Another Runup writes the record of {folder} now; close it there and try again.");
            }

            return opening = Connect(folder, writer, time, use);
        }
        catch (SqliteException e)
        {
            return SqliteTrouble.Opening(e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new StoreOpening.Unreachable($"The record of {folder} can't be used: {e.Message.TrimEnd('.')}.");
        }
        finally
        {
            if (opening is not StoreOpening.Opened)
            {
                writer?.Dispose();
            }
        }
    }

    private static StoreOpening? Before(string folder, StoreUse use)
    {
        if (!Directory.Exists(folder))
        {
            return new StoreOpening.Unreachable($"There is no folder {folder}.");
        }

        if (FolderFitness.ObjectionTo(folder) is { } why)
        {
            return new StoreOpening.UnfitFolder($"The record can't be kept in {folder}: {why}. Keep the site folder on a disk of this computer.");
        }

        return use == StoreUse.ReadOnly && !File.Exists(SiteRecord.DatabaseIn(folder))
            ? new StoreOpening.Absent($"Nothing was recorded in {folder} yet.")
            : null;
    }

    private static StoreOpening Connect(string folder, WriterLock? writer, TimeProvider time, StoreUse use)
    {
        if (use == StoreUse.Append && NewRecord.IsNeeded(folder))
        {
            NewRecord.Make(folder);
        }

        var connection = SiteRecord.Connect(SiteRecord.DatabaseIn(folder), use);
        StoreOpening? opening = null;
        try
        {
            connection.Open();
            return opening = Durable(connection, folder, use) ?? Schema.Settle(connection, use) ?? Prove(connection, writer, time);
        }
        finally
        {
            if (opening is not StoreOpening.Opened)
            {
                connection.Dispose();
            }
        }
    }

    // FULL: each commit waits until the write-ahead log is on the disk, so that an entry survives a power cut, not only a crash.
    private static StoreOpening? Durable(SqliteConnection connection, string folder, StoreUse use)
    {
        if (use == StoreUse.ReadOnly)
        {
            return null;
        }

        var mode = SiteRecord.Scalar(connection, "PRAGMA journal_mode = WAL");
        SiteRecord.Scalar(connection, "PRAGMA synchronous = FULL");
        return string.Equals(mode, "wal", StringComparison.OrdinalIgnoreCase)
            ? null
            : new StoreOpening.UnfitFolder($"The record can't be kept in {folder}: its file system has no write-ahead mode. Keep the site folder on a disk of this computer.");
    }

    private static StoreOpening Prove(SqliteConnection connection, WriterLock? writer, TimeProvider time)
    {
        var walk = ChainWalk.Along(connection);
        return walk.Verdict switch
        {
            ChainVerdict.Intact when walk.Kinds.FirstOrDefault(k => !RecordText.Knows(k)) is { } kind =>
                new StoreOpening.Newer($"{SiteRecord.FileName} holds entries that this Runup does not know ({kind}); use a newer one."),
            ChainVerdict.Intact intact => new StoreOpening.Opened(new SqliteRecords(connection, writer, time, intact)),
            ChainVerdict.Broken broken => new StoreOpening.ChainBroken(broken.Sequence, $"{broken.What} Keep {SiteRecord.FileName} as it is, and put a copy from before in its place."),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
