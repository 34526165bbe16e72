namespace Runup.Commissioning.Entry;

/// <summary>What happens while an entry goes on, for the person who watches it.</summary>
/// <param name="Words">A sentence.</param>
/// <param name="Line">The line that it is about, or null.</param>
/// <param name="Outcome">How its write ended; null while it is under way or where it is about none.</param>
/// <param name="Done">Lines dealt with so far.</param>
/// <param name="Of">Lines to deal with.</param>
public sealed record EntryEvent(string Words, EntryLine? Line, WriteOutcome? Outcome, int Done, int Of);
