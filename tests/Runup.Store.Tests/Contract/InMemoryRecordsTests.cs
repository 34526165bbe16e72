using Runup.Commissioning.Records;

namespace Runup.Store.Tests.Contract;

public sealed class InMemoryRecordsTests : RecordsContract
{
    private InMemoryRecords? records;

    protected override IRecords Records => records ??= new InMemoryRecords(Time);
}
