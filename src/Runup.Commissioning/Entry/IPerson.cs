namespace Runup.Commissioning.Entry;

/// <summary>The person beside the machine, as far as entry needs one: what only a person can see or do.</summary>
public interface IPerson
{
    /// <summary>Asks for one thing to be confirmed by name; the person makes it so first, where it is something to do.</summary>
    Task<PersonSays> Confirm(ToConfirm thing, CancellationToken cancellation);

    /// <summary>Asks for the drive's supply to be switched off, the display to go dark, and the supply to be switched on again; returns when it is on.</summary>
    Task<PersonSays> PowerCycle(CancellationToken cancellation);
}

/// <summary>One thing to be confirmed by name.</summary>
/// <param name="What">Its id in the record, such as <c>no-run-command-pending</c>.</param>
/// <param name="Words">What is asked, in a sentence.</param>
/// <param name="Step">Before what it is asked, such as <c>before-first-write</c>.</param>
/// <param name="NeedsNote">Whether it counts only with a remark, such as where a stop device is.</param>
public sealed record ToConfirm(string What, string Words, string Step, bool NeedsNote = false);

/// <summary>What a person says to a question; a closed set.</summary>
public abstract record PersonSays
{
    private PersonSays()
    {
    }

    /// <summary>It is so, or it was done.</summary>
    /// <param name="By">Who says it.</param>
    /// <param name="Note">A figure or remark, or null.</param>
    public sealed record Yes(string By, string? Note = null) : PersonSays;

    /// <summary>It is not so, or will not be done.</summary>
    /// <param name="Why">Why, in words.</param>
    public sealed record No(string Why) : PersonSays;
}
