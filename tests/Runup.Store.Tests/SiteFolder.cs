using Microsoft.Data.Sqlite;
using Runup.Commissioning.Records;

namespace Runup.Store.Tests;

/// <summary>A folder for one test, removed with all in it.</summary>
internal sealed class SiteFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("runup-store-").FullName;

    public string Database => System.IO.Path.Combine(Path, "runup.db");

    public SqliteRecords Open(TimeProvider? time = null, StoreUse use = StoreUse.Append) =>
        SqliteRecords.Open(Path, time ?? TimeProvider.System, use).ShouldBeOfType<StoreOpening.Opened>().Records;

    public StoreOpening TryOpen(StoreUse use = StoreUse.Append) => SqliteRecords.Open(Path, TimeProvider.System, use);

    /// <summary>A record of so many entries, closed again.</summary>
    public async Task<IReadOnlyList<Recorded>> Filled(int entries)
    {
        using var records = Open();
        for (var i = 1; i <= entries; i++)
        {
            await records.Append("P-101", new RecordBody.WriteIntended("104", null, 1000 + i), default);
        }

        return await records.Of("P-101", default);
    }

    /// <summary>Runs SQL as another program would.</summary>
    public void Sql(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={Database};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
