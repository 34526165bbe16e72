using Microsoft.Data.Sqlite;

namespace Runup.Store.Tests;

public sealed class AppendOnlyTests : IDisposable
{
    private readonly SiteFolder folder = new();

    [Theory]
    [InlineData("UPDATE entries SET body = '{}' WHERE sequence = 2")]
    [InlineData("UPDATE entries SET sequence = 9 WHERE sequence = 2")]
    [InlineData("DELETE FROM entries WHERE sequence = 3")]
    [InlineData("DELETE FROM entries")]
    [InlineData("INSERT OR REPLACE INTO entries VALUES (2, 'at', 'tag', 'hash', 'body')")]
    [InlineData("INSERT INTO entries VALUES (7, 'at', 'tag', 'hash', 'body')")]
    [InlineData("INSERT INTO entries VALUES (0, 'at', 'tag', 'hash', 'body')")]
    public async Task The_database_itself_refuses_to_change_what_is_recorded(string sql)
    {
        await folder.Filled(3);

        Should.Throw<SqliteException>(() => folder.Sql(sql)).Message.ShouldContain("append-only");

        using var records = folder.Open();
        (await records.Verify(null, default)).ShouldBeOfType<Chain.ChainVerdict.Intact>().Entries.ShouldBe(3);
    }

    public void Dispose() => folder.Dispose();
}
