namespace Runup.Profiles;

/// <summary>A command as the requests that give it, in the order in which they are sent: one where word and reference adjoin.</summary>
/// <remarks>
/// Else a run command sends the reference first, so that the motor never runs to an older one; every other command sends the word
/// first, so that nothing can come between a person and the stop.
/// </remarks>
public static class CommandRequests
{
    /// <summary>The requests of a command; null where a frequency is asked for that can't be told to this drive with what is known of it.</summary>
    public static IReadOnlyList<RegisterWords>? Of(DriveProfile profile, CommandInterface command, DriveCommand asked, ParameterValues values)
    {
        var word = RegisterWords.Of(command.Word, CommandCodec.WordRaw(command, asked));
        if (CommandCodec.ReferenceRaw(profile, command, asked, values) is not { } raw)
        {
            // A word that runs nothing goes out whatever is known of the reference.
            return asked.Frequency.Hertz > 0 ? null : [word];
        }

        var reference = RegisterWords.Of(command.Reference, raw);
        return Adjoin(command) ? [word with { Words = [.. word.Words, .. reference.Words] }]
            : PowerMachine.CommandOf(asked.Word) == PowerCommand.EnableOperation ? [reference, word]
            : [word, reference];
    }

    private static bool Adjoin(CommandInterface command) => command.Word.Register + command.Word.RegisterCount == command.Reference.Register;
}
