using System.Globalization;
using Runup.Files.Listings;
using Runup.Profiles;

namespace Runup.Files.Tests.Listings;

/// <summary>Reads a table from a text, for a test.</summary>
internal static class Reading
{
    internal static IReadOnlyList<ListedParameter> Rows(string text, ListingKind kind = ListingKind.Csv) => Read(text, kind).Rows;

    internal static (IReadOnlyList<ListedParameter> Rows, IReadOnlyList<string> Problems, IReadOnlyList<string> Cautions) Read(string text, ListingKind kind = ListingKind.Csv)
    {
        var problems = new Problems("t");
        var cautions = new Problems("t");
        var listing = ListingFile.ReadText(text, kind, ListingOptions.Guess, problems, cautions);
        return (listing?.Parameters ?? [], [.. problems.InOrder().Select(p => p.ToString())], [.. cautions.InOrder().Select(p => p.ToString())]);
    }

    /// <summary>A row in one line: low, high, unit, scale, default, choices.</summary>
    internal static string Shown(ListedParameter row) =>
        string.Create(CultureInfo.InvariantCulture, $"{row.Low?.ToString() ?? "?"}..{row.High?.ToString() ?? "?"} {row.Unit} x{row.Scale?.ToString() ?? "?"} = {row.Default?.ToString() ?? "?"} [{string.Join(", ", row.Choices.Select(c => $"{c.Raw} {c.Label}"))}]");
}
