using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Runup.Store.Compiled;
using Runup.Store.Model;

namespace Runup.Store.Opening;

/// <summary>The names of the files, and how the database is connected to.</summary>
internal static class SiteRecord
{
    public const string FileName = "runup.db";

    private const string LockName = "runup.db.lock";

    public static string DatabaseIn(string folder) => Path.Combine(folder, FileName);

    public static string LockIn(string folder) => Path.Combine(folder, LockName);

    /// <summary>A connection that is not shared, so that closing it closes the file; two seconds are waited for a lock.</summary>
    public static SqliteConnection Connect(string database, StoreUse use) => new(new SqliteConnectionStringBuilder
    {
        DataSource = database,
        Mode = use == StoreUse.Append ? SqliteOpenMode.ReadWriteCreate : SqliteOpenMode.ReadOnly,
        Pooling = false,
        DefaultTimeout = 2,
    }.ToString());

    public static RecordContext Context(SqliteConnection connection) =>
        new(new DbContextOptionsBuilder<RecordContext>().UseSqlite(connection).UseModel(RecordContextModel.Instance).Options);

    public static string? Scalar(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar()?.ToString();
    }

    public static IReadOnlyList<string> Column(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var column = new List<string>();
        while (reader.Read())
        {
            column.Add(reader.GetString(0));
        }

        return column;
    }
}
