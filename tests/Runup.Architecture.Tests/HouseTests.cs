using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Runup.Architecture.Tests;

public sealed partial class HouseTests
{
    private static readonly string[] NotOurWords = ["work" + "bench", "torque " + "proving", "kinetic " + "buffering", "HAND/" + "AUTO", "wiz" + "ard"];

    private static readonly string[] Kinds = [".cs", ".md", ".yaml", ".yml", ".json", ".csv", ".props", ".csproj", ".sh", ".c", ".py", ".cmd", ""];

    [Fact]
    public void Every_package_has_its_decision_record()
    {
        var records = string.Concat(Directory.EnumerateFiles(Path.Combine(Rooms.Root, "docs", "decisions"), "*.md").Select(File.ReadAllText));
        var packages = XDocument.Load(Path.Combine(Rooms.Root, "Directory.Packages.props")).Descendants("PackageVersion").Select(p => p.Attribute("Include")!.Value);
        packages.Where(p => !records.Contains(p, StringComparison.Ordinal)).ShouldBeEmpty();
    }

    [Fact]
    public void No_file_names_a_machine_path_or_a_word_that_is_not_ours()
    {
        var offences =
            from file in Sources()
            from line in File.ReadLines(file).Select((text, index) => (Text: text, Number: index + 1))
            where MachinePath().IsMatch(line.Text) || NotOurWords.Any(w => line.Text.Contains(w, StringComparison.OrdinalIgnoreCase))
            select $"{Path.GetRelativePath(Rooms.Root, file)}:{line.Number} {line.Text.Trim()}";
        offences.ShouldBeEmpty();
    }

    [Fact]
    public void Every_key_that_is_written_as_JSON_stands_on_its_page()
    {
        var page = File.ReadAllText(Path.Combine(Rooms.Root, "docs", "formats", "json.md"));
        var written = Directory.EnumerateFiles(Path.Combine(Rooms.Root, "src", "Runup.Cli"), "*.cs", SearchOption.AllDirectories)
            .Select(File.ReadAllText)
            .Where(text => text.Contains("Utf8JsonWriter", StringComparison.Ordinal) || text.Contains("JsonOut", StringComparison.Ordinal))
            .SelectMany(text => WrittenKey().Matches(text).Select(m => m.Groups["key"].Value))
            .Distinct(StringComparer.Ordinal).ToList();
        written.Count.ShouldBeGreaterThan(100);
        written.Where(key => !page.Contains($"`{key}`", StringComparison.Ordinal) && !page.Contains($"\"{key}\"", StringComparison.Ordinal)).ShouldBeEmpty();
    }

    private static IEnumerable<string> Sources() =>
        Directory.EnumerateFiles(Rooms.Root, "*", SearchOption.AllDirectories)
            .Where(f => !Path.GetRelativePath(Rooms.Root, f).Split(Path.DirectorySeparatorChar).Any(part => part is "artifacts" or ".git" or "demo-result"))
            .Where(f => Kinds.Contains(Path.GetExtension(f), StringComparer.Ordinal) && new FileInfo(f).Length < 1 << 20);

    // Calls of a JSON writer with a key in the program's own hand; a call that passes the writer on names the key second.
    [GeneratedRegex(@"(Write(String|Number|Boolean|Null|StartArray|StartObject|PropertyName)|Number|Array|Object|Band|Figure|Uncoupled)\((json, |writer, |j, )?""(?<key>[A-Za-z][A-Za-z0-9_]*)""", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex WrittenKey();

    [GeneratedRegex(@"(^|[^a-zA-Z0-9.\-_}/])/(tmp|work|root|home)/[a-z]", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex MachinePath();
}
