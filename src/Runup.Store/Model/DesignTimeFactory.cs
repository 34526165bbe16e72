using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Runup.Store.Model;

/// <summary>What <c>dotnet ef</c> uses when a migration or the compiled model is generated.</summary>
internal sealed class DesignTimeFactory : IDesignTimeDbContextFactory<RecordContext>
{
    public RecordContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<RecordContext>().UseSqlite("Data Source=:memory:").Options);
}
