using Microsoft.Data.Sqlite;

namespace Runup.Store.Opening;

/// <summary>What SQLite's result codes mean to a person.</summary>
/// <remarks>Numbers: SQLite documentation, "Result and Error Codes".</remarks>
internal static class SqliteTrouble
{
    public static StoreOpening Opening(SqliteException e) => e.SqliteErrorCode switch
    {
        5 or 6 => new StoreOpening.InUse($"Another program has {SiteRecord.FileName} locked; close it and try again."),
        // 1: statements that are always right fail only on a file that is not.
        1 or 11 or 26 => new StoreOpening.Damaged($"{SiteRecord.FileName} is damaged or is no record; keep it as it is and put a copy from before in its place."),
        _ => new StoreOpening.Unreachable($"{SiteRecord.FileName} can't be used: {Reason(e)}."),
    };

    public static string Reason(SqliteException e) => e.SqliteErrorCode switch
    {
        3 => "it is not permitted",
        5 or 6 => "another program has it locked",
        8 => "it is write-protected",
        10 => "the disk failed to read or write",
        11 or 26 => "it is damaged",
        13 => "the disk is full",
        14 => "it can't be opened",
        19 => "the database refused a change of what is recorded",
        _ => e.Message.TrimEnd('.'),
    };
}
