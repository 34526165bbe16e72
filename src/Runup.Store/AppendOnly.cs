namespace Runup.Store;

/// <summary>What the database itself does so that the record only grows, whatever program opens it.</summary>
internal static class AppendOnly
{
    /// <summary>Marks a SQLite file as a record of Runup: "RNUP" in ASCII.</summary>
    public const int ApplicationId = 0x524E5550;

    /// <summary>The guards; the third also stops an insert that replaces, which runs no delete trigger.</summary>
    public const string Triggers =
        """
        CREATE TRIGGER entries_no_update BEFORE UPDATE ON entries
        BEGIN SELECT RAISE(ABORT, 'the record is append-only: an entry is never changed'); END;
        CREATE TRIGGER entries_no_delete BEFORE DELETE ON entries
        BEGIN SELECT RAISE(ABORT, 'the record is append-only: an entry is never removed'); END;
        CREATE TRIGGER entries_in_order BEFORE INSERT ON entries
        WHEN NEW.sequence IS NOT (SELECT coalesce(max(sequence), 0) + 1 FROM entries)
        BEGIN SELECT RAISE(ABORT, 'the record is append-only: an entry comes after the last'); END;
        """;

    /// <summary>Names of the guards.</summary>
    public static readonly IReadOnlySet<string> TriggerNames = new HashSet<string>(["entries_no_update", "entries_no_delete", "entries_in_order"], StringComparer.Ordinal);
}
