using Runup.Commissioning.Records;

namespace Runup.Store.Tests.Contract;

public sealed class SqliteRecordsTests : RecordsContract, IDisposable
{
    private readonly SiteFolder folder = new();
    private SqliteRecords? records;

    protected override IRecords Records => records ??= folder.Open(Time);

    public void Dispose()
    {
        records?.Dispose();
        folder.Dispose();
    }
}
