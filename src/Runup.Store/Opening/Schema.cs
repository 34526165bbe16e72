using System.Globalization;
using System.Reflection;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Runup.Store.Opening;

/// <summary>Brings the database to this program's schema, or says why that can't be.</summary>
internal static class Schema
{
    /// <summary>Null where the schema is this program's now.</summary>
    public static StoreOpening? Settle(SqliteConnection connection, StoreUse use)
    {
        var tables = SiteRecord.Column(connection, "SELECT name FROM sqlite_schema WHERE type = 'table'");
        if (tables.Count == 0)
        {
            return use == StoreUse.Append ? Migrate(connection) : new StoreOpening.Absent("The record is empty: nothing was recorded here yet.");
        }

        if (SiteRecord.Scalar(connection, "PRAGMA integrity_check(1)") is not "ok")
        {
            return new StoreOpening.Damaged($"{SiteRecord.FileName} is damaged; keep it as it is and put a copy from before in its place.");
        }

        var id = SiteRecord.Scalar(connection, "PRAGMA application_id");
        if (!string.Equals(id, AppendOnly.ApplicationId.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal))
        {
            return new StoreOpening.Damaged($"{SiteRecord.FileName} is a database of another program; give Runup another folder.");
        }

        var known = Known();
        var applied = SiteRecord.Column(connection, "SELECT MigrationId FROM __EFMigrationsHistory").ToHashSet(StringComparer.Ordinal);
        return (applied.IsSubsetOf(known), known.IsSubsetOf(applied)) switch
        {
            (false, _) => new StoreOpening.Newer($"{SiteRecord.FileName} was written by a newer Runup; use that one."),
            (_, true) => Guards(connection),
            _ when use == StoreUse.Append => Migrate(connection),
            _ => new StoreOpening.Damaged($"{SiteRecord.FileName} was written by an older Runup; open it once for writing, then read it."),
        };
    }

    // Asked of the assembly itself: to ask EF Core's services costs a third of the time that opening takes.
    private static HashSet<string> Known() => typeof(Schema).Assembly.GetTypes()
        .Select(t => t.GetCustomAttribute<MigrationAttribute>()?.Id).OfType<string>().ToHashSet(StringComparer.Ordinal);

    /// <summary>Brings the schema up to date; null where that went well.</summary>
    internal static StoreOpening? Migrate(SqliteConnection connection)
    {
        // Left by a migration that was killed; whoever comes here holds the writer's lock.
        SiteRecord.Scalar(connection, "DROP TABLE IF EXISTS \"__EFMigrationsLock\"");
        using var context = SiteRecord.Context(connection);
        context.Database.Migrate();
        return Guards(connection);
    }

    private static StoreOpening? Guards(SqliteConnection connection)
    {
        var present = SiteRecord.Column(connection, "SELECT name FROM sqlite_schema WHERE type = 'trigger'");
        return AppendOnly.TriggerNames.IsSubsetOf(present)
            ? null
            : new StoreOpening.Damaged($"{SiteRecord.FileName} has lost its guards against change, so it was edited by another program; keep it as it is and take a copy from before.");
    }
}
