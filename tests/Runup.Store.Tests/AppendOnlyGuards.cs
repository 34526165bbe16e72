namespace Runup.Store.Tests;

/// <summary>The guards' names as a forger would put them back; empty ones suffice to look right.</summary>
internal static class AppendOnlyGuards
{
    public const string Sql =
        """
        CREATE TRIGGER entries_no_update BEFORE UPDATE ON entries BEGIN SELECT 1; END;
        CREATE TRIGGER entries_no_delete BEFORE DELETE ON entries BEGIN SELECT 1; END;
        CREATE TRIGGER entries_in_order BEFORE INSERT ON entries BEGIN SELECT 1; END;
        """;
}
