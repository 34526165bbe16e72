using Runup.Files.Csv;
using Runup.Files.Listings;
using Runup.Files.Tests.Profiles;

namespace Runup.Files.Tests.Suggestion;

/// <summary>Our own tables, each in another hand, and the truth about them.</summary>
internal static class Hands
{
    internal static string PathOf(string table) => Path.Combine(Drives.Root, "tests", "Runup.Files.Tests", "Suggestion", "Tables", table);

    internal static Listing Read(string table, out IReadOnlyList<FileProblem> problems)
    {
        var found = new Problems(table);
        var cautions = new Problems(table);
        var listing = ListingFile.ReadFile(PathOf(table), ListingOptions.Guess, found, cautions);
        found.InOrder().ShouldBeEmpty();
        problems = cautions.InOrder();
        return listing.ShouldNotBeNull(string.Join('\n', problems));
    }

    internal static Dictionary<string, IReadOnlyList<string>> Truth(string table)
    {
        var problems = new Problems(table);
        var truth = CsvTable.ReadFile(PathOf(Path.ChangeExtension(table, ".truth.csv")), 1 << 20, problems);
        problems.InOrder().ShouldBeEmpty();
        return truth!.Rows.ToDictionary(r => r[0].Text, r => (IReadOnlyList<string>)r[1].Text.Split('+'), StringComparer.Ordinal);
    }
}
