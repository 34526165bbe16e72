namespace Runup.Commissioning.Checks.Drive;

/// <summary>What is said of a condition that costs the drive current.</summary>
/// <param name="Figure">The maker's figure.</param>
/// <param name="Title">Its title.</param>
/// <param name="RemedyDerated">What to do about the lower current.</param>
/// <param name="RemedyForbidden">What to do beyond the highest permitted.</param>
/// <param name="Said">A value with its unit, for readers of either habit.</param>
internal sealed record DeratingWords(string Figure, string Title, string RemedyDerated, string RemedyForbidden, Func<double, string> Said);

/// <summary>A condition that costs the drive current, up to a highest permitted value.</summary>
internal static class Derated
{
    internal static CheckResult Judge(Check check, double value, double fullUpTo, double highest, double lossPerUnit, string unit, DeratingWords words)
    {
        if (value <= fullUpTo)
        {
            return new CheckResult.Satisfied(check.Id, $"{words.Said(value)}, full current up to {words.Said(fullUpTo)}");
        }

        var forbidden = value > highest;
        var left = Math.Max(0, 1 - (lossPerUnit * (value - fullUpTo)));
        return new CheckResult.Violated(check.Id, forbidden ? Severity.Blocker : Severity.Note, check.Blocks, new Basis.MakersData(words.Figure))
        {
            Title = forbidden ? $"{words.Title} beyond what the drive permits" : $"{words.Title} costs current",
            Explanation = forbidden
                ? $"{words.Said(value)} is beyond the {words.Said(highest)} that the maker permits."
                : $"At {words.Said(value)} the drive has {Said.Percent(left)} of its current; full current ends at {words.Said(fullUpTo)}.",
            Remedy = forbidden ? words.RemedyForbidden : words.RemedyDerated,
            Value = value,
            Limit = forbidden ? highest : fullUpTo,
            Unit = unit,
        };
    }
}
