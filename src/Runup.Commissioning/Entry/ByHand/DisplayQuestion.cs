using Runup.Profiles;

namespace Runup.Commissioning.Entry.ByHand;

/// <summary>One parameter about which a person at the display is asked.</summary>
public sealed record DisplayQuestion
{
    /// <summary>The parameter.</summary>
    public required Parameter Parameter { get; init; }

    /// <summary>What is to be looked for.</summary>
    public required LookFor For { get; init; }

    /// <summary>Place among those that are asked, from 1.</summary>
    public required int Place { get; init; }

    /// <summary>How many are asked.</summary>
    public required int Of { get; init; }

    /// <summary>What the display showed when it was last looked at; null where it never was.</summary>
    public ShownValue? Now { get; init; }

    /// <summary>What it shows from the factory.</summary>
    public required ShownValue Factory { get; init; }

    /// <summary>What an empty answer stands for: that the display shows exactly this.</summary>
    public required ShownValue Expected { get; init; }

    /// <summary>Why it is to have that value; null where there is nothing to say.</summary>
    public string? Why { get; init; }

    /// <summary>Whether it was answered once already and is asked again, since much hangs on it.</summary>
    public bool SecondLook { get; init; }

    /// <summary>What was wrong with the last answer; null where it is asked for the first time.</summary>
    public string? Trouble { get; init; }
}

/// <summary>What a person looks for on the display.</summary>
public enum LookFor
{
    /// <summary>What it shows, whatever that is.</summary>
    Found,

    /// <summary>The value that is to be set now.</summary>
    Entered,

    /// <summary>Whether it kept its value without power.</summary>
    Kept,
}
