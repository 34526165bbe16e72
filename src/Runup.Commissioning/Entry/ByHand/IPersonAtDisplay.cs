namespace Runup.Commissioning.Entry.ByHand;

/// <summary>A person at the drive's own display, who reads it and sets what is asked.</summary>
public interface IPersonAtDisplay : IPerson
{
    /// <summary>Who it is, for the record.</summary>
    string Name { get; }

    /// <summary>Asks what the display shows of one parameter, and hands back the answer as it was typed; null where nobody answers any more.</summary>
    Task<string?> Look(DisplayQuestion question, CancellationToken cancellation);

    /// <summary>Says something that needs no answer.</summary>
    void Tell(string words);
}
