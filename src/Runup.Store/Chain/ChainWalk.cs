using System.Globalization;
using System.Text;
using Microsoft.Data.Sqlite;
using Runup.Commissioning.Records;

namespace Runup.Store.Chain;

/// <summary>Computes the chain again from the stored bytes, entry by entry.</summary>
internal sealed class ChainWalk
{
    private readonly HashSet<string> kinds = new(StringComparer.Ordinal);

    private ChainWalk()
    {
    }

    /// <summary>What came of it.</summary>
    public ChainVerdict Verdict { get; private set; } = new ChainVerdict.Intact(0, RecordChain.Origin);

    /// <summary>Kinds of body met.</summary>
    public IReadOnlySet<string> Kinds => kinds;

    /// <summary>Walks the whole record.</summary>
    /// <exception cref="SqliteException">The database can't be read to its end.</exception>
    public static ChainWalk Along(SqliteConnection connection, string? printedHead = null)
    {
        var walk = new ChainWalk();
        walk.Verdict = walk.Go(connection, printedHead);
        return walk;
    }

    private ChainVerdict Go(SqliteConnection connection, string? printedHead)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT sequence, at, tag, hash, body FROM entries ORDER BY sequence";
        using var reader = command.ExecuteReader();
        var count = 0L;
        var head = RecordChain.Origin;
        var found = printedHead is null;
        while (reader.Read())
        {
            count++;
            if (Objection(reader, count, head) is { } what)
            {
                return new ChainVerdict.Broken(count, what);
            }

            head = reader.GetString(3);
            found |= string.Equals(head, printedHead, StringComparison.OrdinalIgnoreCase);
        }

        return found ? new ChainVerdict.Intact(count, head) : new ChainVerdict.HeadMissing(count, head, printedHead!);
    }

    private string? Objection(SqliteDataReader row, long due, string head)
    {
        var sequence = row.GetInt64(0);
        if (sequence != due)
        {
            return string.Create(CultureInfo.InvariantCulture, $"Entry {due} is missing: entry {sequence} stands in its place.");
        }

        var body = row.GetFieldValue<byte[]>(4);
        kinds.Add(KindOf(body));
        var hash = RecordChain.Hash(head, sequence, row.GetFieldValue<byte[]>(1), row.GetFieldValue<byte[]>(2), body);
        return string.Equals(hash, row.GetString(3), StringComparison.Ordinal)
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"Entry {due} was changed after it was recorded.");
    }

    // The kind comes first in every body; to parse them all would cost more than to hash them.
    private static string KindOf(ReadOnlySpan<byte> body)
    {
        var start = "{\"kind\":\""u8;
        if (!body.StartsWith(start))
        {
            return string.Empty;
        }

        var rest = body[start.Length..];
        var end = rest.IndexOf((byte)'"');
        return end < 0 ? string.Empty : Encoding.UTF8.GetString(rest[..end]);
    }
}
