using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;

namespace Runup.Commissioning.FirstRun.AtPanel;

/// <summary>The person who runs the motor at the drive's panel, or from the machine's own control, and tells what is asked. Ending it is a cancellation.</summary>
public interface IPersonAtPanel : IPerson
{
    /// <summary>Who it is, for the record.</summary>
    string Name { get; }

    /// <summary>Shows the step that comes next; hands back why it is left out, or null where it is to be done.</summary>
    Task<string?> Begin(StepAhead step, CancellationToken cancellation);

    /// <summary>Asks for one reading, and hands back the answer as it was typed.</summary>
    Task<string> Read(ReadingQuestion question, CancellationToken cancellation);

    /// <summary>Says what became of a reading.</summary>
    void Took(RecordBody.ReadingTaken reading);

    /// <summary>Says something that needs no answer.</summary>
    void Tell(string words);
}

/// <summary>The step that comes next.</summary>
/// <param name="Step">The step.</param>
/// <param name="Place">Its place among all, from 1.</param>
/// <param name="Of">How many there are.</param>
/// <param name="MayBeLeftOut">Whether what comes after can do without it.</param>
/// <param name="GoesOn">Whether it was cut off and goes on with the readings that it has.</param>
public sealed record StepAhead(FirstRunStep Step, int Place, int Of, bool MayBeLeftOut, bool GoesOn);

/// <summary>One reading that a person is asked for.</summary>
public sealed record ReadingQuestion
{
    /// <summary>What is to be read, such as output current at 25 Hz.</summary>
    public required string Quantity { get; init; }

    /// <summary>The unit of a bare number.</summary>
    public required string Unit { get; init; }

    /// <summary>What is expected of it.</summary>
    public required Expected Expected { get; init; }

    /// <summary>From what it is read unless the answer says otherwise.</summary>
    public required string From { get; init; }

    /// <summary>Place among those asked together, from 1.</summary>
    public required int Place { get; init; }

    /// <summary>How many are asked together.</summary>
    public required int Of { get; init; }

    /// <summary>What was typed before and lies outside, to be looked at once more; null where it is asked for the first time.</summary>
    public double? Outside { get; init; }

    /// <summary>What was wrong with the last answer, or what it means; null where there is nothing to say.</summary>
    public string? Remark { get; init; }
}
