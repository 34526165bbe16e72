using Runup.Profiles;

namespace Runup.Commissioning.Sheet;

/// <summary>A word that makes a person at the drive stop at a line.</summary>
/// <param name="Word">The word, in capitals.</param>
/// <param name="About">What it is about; empty where the word says all.</param>
public sealed record SheetMark(string Word, string About = "")
{
    /// <summary>The marks of a line, the gravest first.</summary>
    internal static IEnumerable<SheetMark> Of(SheetLine line, DriveProfile profile, IReadOnlyList<string> foundOtherwise)
    {
        if (line.Parameter is not { } parameter)
        {
            yield return new("NO COUNTERPART");
            yield break;
        }

        if (line.Mapping is Mapping.NeedsChoice)
        {
            yield return new("CHOOSE");
        }

        if (line.Fit is Fit.OutOfRange)
        {
            yield return new("DIFFERS");
        }

        if (line.Fit is Fit.Rounded && line.Settings.Any(s => FitWords.Of(line.Fit, s) is not null))
        {
            yield return new("ROUNDED");
        }

        if (StandingIn(profile, parameter) is { Count: > 0 } others)
        {
            yield return new("CHANGES UNIT", $"of {string.Join(", ", others)}");
        }

        if (parameter.Form is ParameterForm.Numeric { Unit: ParameterUnit.ChosenBy chosen })
        {
            yield return new("UNIT", $"as chosen in {chosen.Parameter}");
        }

        if (line.Settings.Count > 0 && EntryOrder.Before(profile, parameter).Intersect(foundOtherwise, StringComparer.Ordinal).ToList() is { Count: > 0 } grounds)
        {
            yield return new("RESTS ON", $"{string.Join(", ", grounds)}, worked out with the factory value and found otherwise");
        }

        if (line is { Settings.Count: 0, Before: { } before, Default: { } factory } && before.Raw != factory.Raw)
        {
            yield return new("OTHER", $"than from the factory: {factory.Text}");
        }

        if (parameter.Resets && line.Changed && profile.SetBy(parameter).Select(p => p.Number).ToList() is { Count: > 0 } set)
        {
            yield return new("RESETS", $"{string.Join(", ", set)}");
        }

        if (line.Settings.Count > 0 && EntryOrder.CanStartMotor(parameter))
        {
            yield return new("CAN START THE MOTOR");
        }

        if (line.Settings.Count > 0 && parameter.NeedsRestart)
        {
            yield return new("AFTER POWER-OFF", "only");
        }
    }

    /// <inheritdoc/>
    public override string ToString() => About.Length == 0 ? Word : $"{Word} {About}";

    private static List<string> StandingIn(DriveProfile profile, Parameter chooser) =>
        [.. profile.Parameters.Where(p => p.Form is ParameterForm.Numeric { Unit: ParameterUnit.ChosenBy chosen } && string.Equals(chosen.Parameter, chooser.Number, StringComparison.Ordinal)).Select(p => p.Number)];
}
