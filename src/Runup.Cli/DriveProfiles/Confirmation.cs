using Runup.Cli.Terminal;
using Runup.Profiles;

namespace Runup.Cli.DriveProfiles;

/// <summary>Which suggested meanings a person confirms.</summary>
internal static class Confirmation
{
    private const string Certain = "certain";

    internal static IReadOnlySet<string> Read(string? option, IReadOnlyList<ListedParameter> rows, IReadOnlyList<Suggestion> suggestions)
    {
        var suggested = rows.Where((_, i) => suggestions[i].Setting is not null).Select(r => r.Number).ToHashSet(StringComparer.Ordinal);
        if (option is null)
        {
            return new HashSet<string>(StringComparer.Ordinal);
        }

        if (option is Certain)
        {
            return rows.Where((_, i) => suggestions[i] is { Setting: not null, Certainty: >= Suggestion.High }).Select(r => r.Number).ToHashSet(StringComparer.Ordinal);
        }

        var numbers = option.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).ToHashSet(StringComparer.Ordinal);
        var unknown = numbers.Where(n => !suggested.Contains(n)).ToList();
        return unknown.Count == 0
            ? numbers
            : throw new Complaint(ExitStatus.BadInput, $"runup: --confirm: nothing is suggested for {string.Join(", ", unknown)}; numbers of rows with a suggestion would do, or {Certain}");
    }
}
