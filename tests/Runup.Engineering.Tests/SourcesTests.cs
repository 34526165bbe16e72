using System.Reflection;
using System.Text.RegularExpressions;

namespace Runup.Engineering.Tests;

/// <summary>Every source that a doc comment's attribute names stands in <c>data/references.yaml</c>.</summary>
public sealed partial class SourcesTests
{
    [Fact]
    public void Every_source_key_is_in_the_list_of_references()
    {
        var keys = Keys();
        var used = Used().ToList();
        used.ShouldNotBeEmpty();
        used.Where(source => !keys.Contains(source.Key)).Select(source => $"{source.Member}: {source.Key}").ShouldBeEmpty();
    }

    [Fact]
    public void Every_reference_says_how_sure_it_is()
    {
        var text = ReferencesText();
        var entries = TopLevelKey().Split(text).Skip(1).Where((_, place) => place % 2 == 1).ToList();
        entries.Count.ShouldBe(Keys().Count);
        foreach (var entry in entries)
        {
            entry.ShouldMatch(@"(?s)^\s+title: .+sure: (seen|memory|practice)");
        }
    }

    private static HashSet<string> Keys() => TopLevelKey().Matches(ReferencesText()).Select(match => match.Groups["key"].Value).ToHashSet(StringComparer.Ordinal);

    private static string ReferencesText()
    {
        using var reader = new StreamReader(typeof(SourcesTests).Assembly.GetManifestResourceStream("references.yaml")!);
        return reader.ReadToEnd();
    }

    /// <summary>Of all assemblies of the product that this test can reach.</summary>
    private static IEnumerable<(string Member, string Key)> Used()
    {
        const BindingFlags all = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;
        return from path in Directory.GetFiles(AppContext.BaseDirectory, "Runup.*.dll")
               where !path.EndsWith("Tests.dll", StringComparison.Ordinal)
               from type in Assembly.LoadFrom(path).GetTypes()
               from member in type.GetMembers(all).Prepend(type)
               from source in member.GetCustomAttributes<SourceAttribute>(inherit: false)
               select ($"{type.FullName}.{member.Name}", source.Key);
    }

    [GeneratedRegex(@"^(?<key>[a-z0-9][a-z0-9-]*):\s*$", RegexOptions.Multiline | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex TopLevelKey();
}
