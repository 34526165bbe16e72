namespace Runup.Profiles;

/// <summary>A piece of a name, and the words of the trade that it may stand for.</summary>
/// <param name="Text">As it stands there.</param>
/// <param name="Readings">The words, with how well each is written; none where it is not known.</param>
/// <param name="Weight">How much it says.</param>
internal sealed record Spoken(string Text, IReadOnlyList<(string Word, double Strength)> Readings, double Weight)
{
    internal double StrengthOf(string word)
    {
        foreach (var (reading, strength) in Readings)
        {
            if (string.Equals(reading, word, StringComparison.Ordinal))
            {
                return strength;
            }
        }

        return 0;
    }
}
