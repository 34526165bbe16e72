using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Runup.Store.Compiled;
using Runup.Store.Model;

namespace Runup.Store.Tests;

/// <summary>The generated parts say what the hand-written model says.</summary>
public sealed class ModelTests
{
    [Fact]
    public void The_migrations_lead_to_the_model()
    {
        using var context = Context(compiled: false);

        context.Database.HasPendingModelChanges().ShouldBeFalse();
    }

    [Fact]
    public void The_compiled_model_is_the_model()
    {
        using var written = Context(compiled: false);
        using var compiled = Context(compiled: true);

        Describe(compiled.Model).ShouldBe(Describe(written.Model));
        Describe(written.Model).ShouldContain("entries: sequence INTEGER key, at TEXT, body TEXT, hash TEXT, tag TEXT");
    }

    private static string Describe(IModel model) => string.Join('\n', model.GetEntityTypes().Select(e =>
        $"{e.GetTableName()}: " + string.Join(", ", e.GetProperties().Select(p =>
            $"{p.GetColumnName()} {p.GetColumnType()}{(p.IsPrimaryKey() ? " key" : string.Empty)}{(p.IsNullable ? " null" : string.Empty)}{(p.ValueGenerated == ValueGenerated.Never ? string.Empty : " generated")}"))));

    private static RecordContext Context(bool compiled)
    {
        // Without the attribute of the assembly EF Core would always find the compiled one.
        var options = new DbContextOptionsBuilder<RecordContext>().UseSqlite(new SqliteConnection("Data Source=:memory:"));
        return new RecordContext((compiled ? options.UseModel(RecordContextModel.Instance) : options.UseModel(Written())).Options);
    }

    private static IModel Written()
    {
        var builder = Microsoft.EntityFrameworkCore.Metadata.Conventions.SqliteConventionSetBuilder.CreateModelBuilder();
        RecordContext.Describe(builder);
        return builder.FinalizeModel();
    }
}
