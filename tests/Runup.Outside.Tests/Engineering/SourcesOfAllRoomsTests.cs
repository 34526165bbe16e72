using System.Reflection;
using System.Text.RegularExpressions;
using Runup.Engineering;

namespace Runup.Outside.Tests.Engineering;

/// <summary>Every source that an attribute names, in any room, stands in <c>data/references.yaml</c>.</summary>
public sealed partial class SourcesOfAllRoomsTests
{
    [Fact]
    public void Every_source_resolves()
    {
        var keys = Keys();
        var used = Used().ToList();
        used.Select(source => source.Room).Distinct().Count().ShouldBeGreaterThan(1);
        used.Where(source => !keys.Contains(source.Key)).Select(source => $"{source.Member}: {source.Key}").ShouldBeEmpty();
    }

    private static HashSet<string> Keys()
    {
        using var reader = new StreamReader(typeof(SourcesOfAllRoomsTests).Assembly.GetManifestResourceStream("references.yaml")!);
        return TopLevelKey().Matches(reader.ReadToEnd()).Select(match => match.Groups["key"].Value).ToHashSet(StringComparer.Ordinal);
    }

    private static IEnumerable<(string Room, string Member, string Key)> Used()
    {
        const BindingFlags all = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;
        return from path in Directory.GetFiles(AppContext.BaseDirectory, "Runup.*.dll")
               where !path.EndsWith("Tests.dll", StringComparison.Ordinal)
               let assembly = Assembly.LoadFrom(path)
               from type in assembly.GetTypes()
               from member in type.GetMembers(all).Prepend(type)
               from source in member.GetCustomAttributes<SourceAttribute>(inherit: false)
               select (assembly.GetName().Name!, $"{type.FullName}.{member.Name}", source.Key);
    }

    [GeneratedRegex(@"^(?<key>[a-z0-9][a-z0-9-]*):\s*$", RegexOptions.Multiline | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex TopLevelKey();
}
