namespace Runup.Profiles;

/// <summary>In which way a parameter seems to count otherwise than the setting that it may mean. It is a guess as the meaning is, for a person to confirm.</summary>
public abstract record ConversionAdvice
{
    private ConversionAdvice()
    {
    }

    /// <summary>Nothing speaks for another way of counting.</summary>
    public sealed record None : ConversionAdvice;

    /// <summary>A conversion that the profile can declare.</summary>
    /// <param name="Key">Its key in a profile, such as <c>counted-over</c>.</param>
    /// <param name="Value">The parameter that it names, or <c>yes</c>.</param>
    /// <param name="Because">What the table says for it, or what is usual where it says nothing.</param>
    /// <param name="IsSaid">Whether the table says it; otherwise it is only usual.</param>
    public sealed record Declared(string Key, string Value, string Because, bool IsSaid) : ConversionAdvice;

    /// <summary>The table leaves it open, or no conversion says it.</summary>
    /// <param name="Question">What the person has to find out in the manual.</param>
    public sealed record Asked(string Question) : ConversionAdvice;
}
