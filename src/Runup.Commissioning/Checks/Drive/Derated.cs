namespace Runup.Commissioning.Checks.Drive;

/// <summary>What is said of a condition that costs the drive current.</summary>
/// <param name="Figure">The maker's figure.</param>
/// <param name="Title">Its title.</param>
/// <param name="RemedyDerated">What to do about the lower current.</param>
/// <param name="RemedyForbidden">What to do beyond the highest permitted.</param>
internal sealed record DeratingWords(string Figure, string Title, string RemedyDerated, string RemedyForbidden);

/// <summary>A condition that costs the drive current, up to a highest permitted value.</summary>
internal static class Derated
{
    internal static CheckResult Judge(Check check, double value, double fullUpTo, double highest, double lossPerUnit, string unit, DeratingWords words)
    {
        if (value <= fullUpTo)
        {
            return new CheckResult.Satisfied(check.Id, $"{Said.Number(value)} {unit}, full current up to {Said.Number(fullUpTo)} {unit}");
        }

        var forbidden = value > highest;
        var left = Math.Max(0, 1 - (lossPerUnit * (value - fullUpTo)));
        return new CheckResult.Violated(check.Id, forbidden ? Severity.Blocker : Severity.Note, check.Blocks, new Basis.MakersData(words.Figure))
        {
            Title = forbidden ? $"{words.Title} beyond what the drive permits" : $"{words.Title} costs current",
            Explanation = forbidden
                ? $"{Said.Number(value)} {unit} is beyond the {Said.Number(highest)} {unit} that the maker permits."
                : $"At {Said.Number(value)} {unit} the drive has {Said.Percent(left)} of its current; full current ends at {Said.Number(fullUpTo)} {unit}.",
            Remedy = forbidden ? words.RemedyForbidden : words.RemedyDerated,
            Value = value,
            Limit = forbidden ? highest : fullUpTo,
            Unit = unit,
        };
    }
}
