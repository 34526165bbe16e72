using System.Text.RegularExpressions;
using Runup.Profiles;

namespace Runup.Files.Listings;

/// <summary>A name that a table prints together with its choices: <c>Winding (0 = star, 1 = delta)</c>, <c>Type of stop: 0 = coast, 1 = ramp</c>.</summary>
/// <param name="Name">The name alone.</param>
/// <param name="Choices">The choices; none where it holds none.</param>
internal sealed partial record NameCell(string Name, IReadOnlyList<NamedValue> Choices)
{
    private const int ShortestName = 3;

    internal static NameCell Read(string text)
    {
        if (InBrackets().Match(text) is { Success: true } bracket && bracket.Index >= ShortestName && ChoiceText.Read(bracket.Groups["inner"].Value) is { Count: >= 2 } inner)
        {
            return new NameCell(text[..bracket.Index].Trim(), inner);
        }

        return Patterns.MarkedChoice().Match(text) is { Success: true } first && first.Index >= ShortestName && ChoiceText.Read(text[first.Index..]) is { Count: >= 2 } behind
            ? new NameCell(text[..first.Index].TrimEnd(' ', ':', '-', '–', ',', ';', '\n', '\t'), behind)
            : new NameCell(text, []);
    }

    [GeneratedRegex(@"[\(\[](?<inner>[^()\[\]]*(?:\([^()]*\)[^()\[\]]*)*)[\)\]]\s*$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex InBrackets();
}
