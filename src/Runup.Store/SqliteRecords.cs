using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Runup.Commissioning.Records;
using Runup.Store.Chain;
using Runup.Store.Model;
using Runup.Store.Opening;

namespace Runup.Store;

/// <summary>The record of a site in SQLite: append-only, hash-chained, one writer; an entry that was returned is on the disk.</summary>
public sealed class SqliteRecords : IRecords, IDisposable
{
    private readonly SemaphoreSlim turn = new(1, 1);
    private readonly SqliteConnection connection;
    private readonly WriterLock? writer;
    private readonly TimeProvider time;
    private long sequence;
    private string head;

    internal SqliteRecords(SqliteConnection connection, WriterLock? writer, TimeProvider time, ChainVerdict.Intact chain)
    {
        this.connection = connection;
        this.writer = writer;
        this.time = time;
        (sequence, head) = chain;
    }

    /// <summary>Opens the record of a site folder, makes it where there is none, and proves its chain.</summary>
    /// <param name="folder">The site folder; it must exist.</param>
    /// <param name="time">The clock.</param>
    /// <param name="use">What for.</param>
    public static StoreOpening Open(string folder, TimeProvider time, StoreUse use = StoreUse.Append) => RecordOpening.Open(folder, time, use);

    /// <inheritdoc/>
    /// <exception cref="InvalidOperationException">The record was opened for reading only.</exception>
    public Task<Recorded> Append(string tag, RecordBody body, CancellationToken cancellation)
    {
        RecordChain.RequireTag(tag);
        ArgumentNullException.ThrowIfNull(body);
        return writer is null
            ? throw new InvalidOperationException("The record was opened for reading only.")
            : InTurn(() => Put(tag, body), cancellation);
    }

    /// <inheritdoc/>
    public Task<IReadOnlyList<Recorded>> Of(string tag, CancellationToken cancellation) => InTurn(() => Get(tag), cancellation);

    /// <summary>Computes the chain again, and looks for a head that was printed.</summary>
    /// <param name="printedHead">The head on a report, or null.</param>
    /// <param name="cancellation">Gives up before the walk begins.</param>
    public async Task<ChainVerdict> Verify(string? printedHead, CancellationToken cancellation)
    {
        try
        {
            return await InTurn(() => ChainWalk.Along(connection, printedHead).Verdict, cancellation);
        }
        catch (RecordsUnavailableException e)
        {
            return new ChainVerdict.Unreadable(e.Message);
        }
    }

    /// <summary>Closes the record and lets another write.</summary>
    public void Dispose()
    {
        connection.Dispose();
        writer?.Dispose();
        turn.Dispose();
    }

    // Off the caller's thread: waiting for a disk must not hold up a heartbeat.
    private async Task<T> InTurn<T>(Func<T> work, CancellationToken cancellation)
    {
        await turn.WaitAsync(cancellation);
        try
        {
            return await Task.Run(work, CancellationToken.None);
        }
        catch (SqliteException e)
        {
            throw new RecordsUnavailableException($"The record {SiteRecord.FileName} can't be used: {SqliteTrouble.Reason(e)}.", e);
        }
        catch (DbUpdateException e) when (e.InnerException is SqliteException inner)
        {
            throw new RecordsUnavailableException($"The record {SiteRecord.FileName} can't be written: {SqliteTrouble.Reason(inner)}.", e);
        }
        finally
        {
            turn.Release();
        }
    }

    private Recorded Put(string tag, RecordBody body)
    {
        var at = time.GetLocalNow();
        var timeText = RecordChain.TimeText(at);
        var bodyText = RecordText.Write(body);
        var hash = RecordChain.Hash(head, sequence + 1, timeText, tag, bodyText);
        using var context = SiteRecord.Context(connection);
        context.Entries.Add(new EntryRow { Sequence = sequence + 1, At = timeText, Tag = tag, Hash = hash, Body = bodyText });
        context.SaveChanges();
        (sequence, head) = (sequence + 1, hash);
        return new Recorded(sequence, at, tag, body, hash);
    }

    private IReadOnlyList<Recorded> Get(string tag)
    {
        using var context = SiteRecord.Context(connection);
        return [.. context.Entries.AsNoTracking().Where(e => e.Tag == tag).OrderBy(e => e.Sequence).AsEnumerable().Select(Read)];
    }

    private static Recorded Read(EntryRow row) => RecordText.Read(row.Body) switch
    {
        RecordReading.Known known => new Recorded(row.Sequence, RecordChain.ReadTime(row.At), row.Tag, known.Body, row.Hash),
        RecordReading.Unknown unknown => throw new RecordsUnavailableException($"Entry {row.Sequence} is of a kind that this Runup does not know ({unknown.Kind}); use a newer one."),
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
