using Runup.Commissioning.Records;

namespace Runup.Commissioning.Entry;

/// <summary>Asks a person for several things by name and keeps each answer.</summary>
internal static class Confirming
{
    /// <summary>What a write, a restore and a power cycle need: each of them can move the shaft.</summary>
    /// <param name="step">Before what it is asked.</param>
    /// <param name="byHand">Whether a person stands at the display, who alone can say that it does not run.</param>
    internal static IReadOnlyList<ToConfirm> BeforeTheShaftMayMove(string step, bool byHand = false) =>
    [
        new("safe-torque-off-open-or-motor-isolated", "Safe torque off is open, or the motor is isolated.", step),
        new("no-run-command-pending", byHand
            ? "No run command is pending at the terminals, on the bus or at the panel, and the display says that the drive does not run."
            : "No run command is pending at the terminals or on the bus.", step),
    ];

    /// <summary>Asks for all in order; null when all were confirmed, else why not.</summary>
    /// <param name="things">What to confirm.</param>
    /// <param name="tag">The set.</param>
    /// <param name="person">Who confirms.</param>
    /// <param name="records">Where each answer is kept.</param>
    /// <param name="notes">Filled with what the person said beside, by the thing's id; null where nobody wants to know.</param>
    /// <param name="cancellation">Gives up.</param>
    internal static async Task<string?> All(
        IReadOnlyList<ToConfirm> things, string tag, IPerson person, IRecords records, Dictionary<string, string>? notes, CancellationToken cancellation)
    {
        foreach (var thing in things)
        {
            switch (await person.Confirm(thing, cancellation))
            {
                case PersonSays.Yes { Note: null } when thing.NeedsNote:
                    return $"not confirmed: {thing.What} (it needs a remark: {thing.Words})";
                case PersonSays.Yes yes:
                    await records.Append(tag, new RecordBody.Confirmed(thing.What, yes.By, Note(thing, yes)), cancellation);
                    if (yes.Note is { } note && notes is not null)
                    {
                        notes[thing.What] = note;
                    }

                    break;
                case PersonSays.No no:
                    return $"not confirmed: {thing.What} ({no.Why})";
            }
        }

        return null;
    }

    private static string Note(ToConfirm thing, PersonSays.Yes yes) => yes.Note is null ? thing.Step : $"{thing.Step}: {yes.Note}";
}
