using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.Entry.ByHand;

/// <summary>A look at several parameters one after another: each answer is on record before the next is asked, all of them in the end as one reading.</summary>
internal sealed class LookThrough(string tag, string identity, HandLook look, IRecords records)
{
    /// <summary>What was seen by number, null where it was left out; or nothing where the person ended it before.</summary>
    /// <param name="moment">As what it is kept.</param>
    /// <param name="purpose">What is looked for.</param>
    /// <param name="parameters">Which, in order.</param>
    /// <param name="expected">What an empty answer stands for.</param>
    /// <param name="before">What is known of the drive, and what was seen before the same look was broken off.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<IReadOnlyDictionary<string, long?>?> Run(
        string moment, LookFor purpose, IReadOnlyList<Parameter> parameters, Func<Parameter, long> expected, HandHistory before, CancellationToken cancellation)
    {
        var known = before.Values;
        var seen = parameters.Where(p => before.HalfLook.ContainsKey(p.Number)).ToDictionary(p => p.Number, p => before.HalfLook[p.Number], StringComparer.Ordinal);
        if (seen.Count > 0)
        {
            look.Person.Tell($"{seen.Count} of {parameters.Count} were looked at before it was broken off; it goes on with the next.");
        }

        var whole = await HandWalk.Along(parameters.Count, async (place, cameBack) =>
        {
            var parameter = parameters[place];
            if (seen.ContainsKey(parameter.Number) && !cameBack)
            {
                return HandTurn.PassedBy;
            }

            var answer = await look.Ask(parameter, (purpose, place + 1, parameters.Count), known[parameter.Number], expected(parameter), known, null, cancellation);
            switch (answer)
            {
                case HandAnswer.Shows shows:
                    (seen[parameter.Number], known) = (shows.Raw, known.With(parameter.Number, shows.Raw));
                    await records.Append(tag, new RecordBody.ParameterSeen(moment, parameter.Number, shows.Raw, look.Person.Name, null), CancellationToken.None);
                    return HandTurn.Done;
                case HandAnswer.LeftOut left:
                    (seen[parameter.Number], known) = (null, known.Without(parameter.Number));
                    await records.Append(tag, new RecordBody.ParameterSeen(moment, parameter.Number, null, look.Person.Name, left.Why), CancellationToken.None);
                    return HandTurn.Done;
                default:
                    return answer is HandAnswer.Back ? HandTurn.Back : HandTurn.Quit;
            }
        });
        if (!whole)
        {
            return null;
        }

        await records.Append(tag, new RecordBody.ParametersRead(moment, identity, seen, look.Person.Name), CancellationToken.None);
        return seen;
    }
}
