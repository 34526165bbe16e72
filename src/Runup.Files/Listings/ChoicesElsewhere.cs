using System.Text.RegularExpressions;
using Runup.Profiles;

namespace Runup.Files.Listings;

/// <summary>Choices that a table prints once and refers to afterwards: <c>see 140</c>, <c>as input 1</c>.</summary>
internal static partial class ChoicesElsewhere
{
    /// <summary>The choices of the parameter that a cell refers to, among those before it; none where it refers to nothing.</summary>
    internal static IReadOnlyList<NamedValue> Read(string text, IReadOnlyList<ListedParameter> before)
    {
        if (text.Length > 40 || before.Count == 0)
        {
            return [];
        }

        if (Same().IsMatch(text))
        {
            return before[^1].Choices;
        }

        if (Reference().Match(text.Trim()) is not { Success: true } match)
        {
            return [];
        }

        var to = match.Groups["to"].Value.Trim().TrimEnd('.', ')');
        var named = before.FirstOrDefault(p => string.Equals(p.Number, to, StringComparison.OrdinalIgnoreCase))
            ?? before.LastOrDefault(p => p.Choices.Count > 0 && to.Length > 1 && $" {p.Name} ".Contains($" {to} ", StringComparison.OrdinalIgnoreCase));
        return named?.Choices ?? [];
    }

    [GeneratedRegex(@"^\s*(?:ditto|[〃″]|same as above|as above|see above)\.?\s*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Same();

    [GeneratedRegex(@"^\(?(?:see|as|same as|like|as for|as in|equal to)\s+(?:(?:no|nr|par|parameter|number)[.\s]\s*)?(?<to>\S.*)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Reference();
}
