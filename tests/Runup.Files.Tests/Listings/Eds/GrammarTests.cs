using System.Text.RegularExpressions;
using Runup.Files.Csv;
using Runup.Files.Listings;
using Runup.Files.Tests.Profiles;

namespace Runup.Files.Tests.Listings.Eds;

/// <summary>Our own data sheets use every section and key of CiA 306, as its public readers implement it (<c>data/cases/eds-grammar.csv</c>).</summary>
public sealed partial class GrammarTests
{
    private static readonly string Folder = Path.Combine(Drives.Root, "tests", "Runup.Files.Tests", "Listings", "Eds");

    private static readonly IReadOnlyList<(string Section, string Key)> Used =
        [.. Directory.EnumerateFiles(Folder, "grebe.*").Where(f => f.EndsWith(".eds", StringComparison.Ordinal) || f.EndsWith(".dcf", StringComparison.Ordinal)).SelectMany(f => Pairs(File.ReadAllLines(f)))];

    [Fact]
    public void Every_production_of_the_grammar_stands_in_a_sheet_of_ours()
    {
        var problems = new Problems("eds-grammar.csv");
        var grammar = CsvTable.ReadFile(Path.Combine(Drives.Root, "data", "cases", "eds-grammar.csv"), 1 << 20, problems).ShouldNotBeNull(string.Join('\n', problems.InOrder()));
        var keys = grammar.Rows.SelectMany(r => Sections(r[0].Text).SelectMany(s => Keys(r[1].Text).Select(k => (Section: s, Key: k)))).ToList();
        keys.Count.ShouldBeGreaterThan(90);
        keys.Where(k => !Used.Any(u => Regex.IsMatch(u.Section, $"^{k.Section}$", RegexOptions.IgnoreCase, TimeSpan.FromSeconds(1)) && string.Equals(u.Key, k.Key, StringComparison.OrdinalIgnoreCase))).ShouldBeEmpty();
    }

    [Fact]
    public void Both_sheets_are_read_without_a_problem()
    {
        foreach (var (file, rows) in new[] { ("grebe.eds", 27), ("grebe.dcf", 20) })
        {
            var problems = new Problems(file);
            var listing = ListingFile.ReadFile(Path.Combine(Folder, file), ListingOptions.Guess, problems, new Problems(file));
            problems.InOrder().ShouldBeEmpty();
            listing!.Parameters.Count.ShouldBe(rows);
        }
    }

    private static IEnumerable<(string Section, string Key)> Pairs(IEnumerable<string> lines)
    {
        var section = "";
        foreach (var line in lines.Where(l => !l.StartsWith(';')))
        {
            if (line.StartsWith('['))
            {
                section = line.Trim()[1..^1];
                yield return (section, "");
            }
            else if (line.Contains('=', StringComparison.Ordinal))
            {
                yield return (section, line[..line.IndexOf('=', StringComparison.Ordinal)].Trim());
            }
        }
    }

    // IIII stands for an index, H for a sub-index, n for a number; what stands in brackets explains.
    private static IEnumerable<string> Sections(string text) =>
        text.StartsWith("Comment line", StringComparison.Ordinal) ? [] : Explanation().Replace(text, "").Split('/', StringSplitOptions.TrimEntries).Select(s =>
            s.Trim('[', ']').Replace("IIII", "[0-9A-F]{4}", StringComparison.Ordinal).Replace("subH", "sub[0-9A-F]{1,2}", StringComparison.Ordinal).Replace("Mn", "M1", StringComparison.Ordinal));

    private static IEnumerable<string> Keys(string text)
    {
        if (text.StartsWith("same keys", StringComparison.Ordinal))
        {
            return ["ParameterName", "ObjectType", "DataType", "AccessType", "DefaultValue", "LowLimit", "HighLimit", "ObjFlags", "ParameterValue", "Denotation"];
        }

        return Explanation().Replace(text, "").Split([',', '/'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(k => k switch
        {
            ['_', ..] => "BaudRate" + k,
            "1..n" => "1",
            "Line1..LineN" => "Line1",
            "Dummy0001..Dummy0007" => "Dummy0007",
            "NrOfEntries..." => "",
            _ => k,
        });
    }

    [GeneratedRegex(@"\s*\([^)]*\)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Explanation();
}
