using Runup.Settings;

namespace Runup.Profiles;

/// <summary>What a parameter may mean. It is a guess: a person confirms it before anything relies on it.</summary>
/// <param name="Setting">The setting; null where none is likely.</param>
/// <param name="Certainty">From 0 to 1; of those of 0.8 and more hardly any is wrong.</param>
/// <param name="Reason">What speaks for it, in a sentence.</param>
public sealed record Suggestion(Setting? Setting, double Certainty, string Reason)
{
    /// <summary>Whether it is likely something that is only read.</summary>
    public bool IsReading { get; init; }

    /// <summary>From here on a suggestion counts as certain enough to be looked at once only.</summary>
    public const double High = 0.8;
}
