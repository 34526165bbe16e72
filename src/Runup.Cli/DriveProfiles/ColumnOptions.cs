using Runup.Cli.Terminal;
using Runup.Files.Listings;

namespace Runup.Cli.DriveProfiles;

/// <summary>Columns that a person names: <c>name=B</c>.</summary>
internal static class ColumnOptions
{
    internal static IReadOnlyDictionary<ColumnRole, int> Read(IReadOnlyList<string> options)
    {
        var told = new Dictionary<ColumnRole, int>();
        foreach (var option in options)
        {
            if (option.Split('=') is not [var word, var letters] || ColumnRoles.Find(word.Trim()) is not { } role || Column(letters.Trim()) is not { } column)
            {
                throw new Complaint(ExitStatus.BadInput, $"runup: --column {option}: this names no column; what it holds and its letter would do, such as name=B; it may hold {string.Join(", ", ColumnRoles.All)}");
            }

            if (!told.TryAdd(role, column))
            {
                throw new Complaint(ExitStatus.BadInput, $"runup: --column {option}: {word.Trim()} is named twice; one column for each would do");
            }
        }

        return told;
    }

    private static int? Column(string letters)
    {
        if (letters.Length is 0 or > 2 || !letters.All(char.IsAsciiLetter))
        {
            return null;
        }

        var column = 0;
        foreach (var letter in letters)
        {
            column = (column * 26) + (char.ToUpperInvariant(letter) - 'A' + 1);
        }

        return column - 1;
    }
}
