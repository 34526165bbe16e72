using Runup.Settings;

namespace Runup.Profiles;

/// <summary>A setting may be said by one parameter only, and every choice must be one that a person can come to.</summary>
internal static class MeaningLint
{
    internal static IEnumerable<LintFinding> Check(DriveProfile profile)
    {
        foreach (var setting in profile.Parameters.SelectMany(p => p.Meaning?.Settings ?? []).Distinct())
        {
            var carrying = profile.Carrying(setting);
            if (carrying.Count > 1 && !IsSpeedChange(carrying))
            {
                foreach (var parameter in carrying.Skip(1))
                {
                    yield return ProfileLint.Error(parameter, "means", $"`{setting.Name}` is what parameter `{carrying[0].Number}` means", "one parameter for a setting; is this a second motor's, a warning or a reading?");
                }
            }
        }

        foreach (var parameter in profile.Parameters.Where(p => p.Meaning is not null && !p.IsKept))
        {
            yield return ProfileLint.Error(parameter, "means", "a reading, command or action carries no setting", "leave out `means`, or check `access`");
        }

        foreach (var parameter in profile.Parameters)
        {
            if (parameter.Meaning is Meaning.Choice choice && Doubled(choice) is { } twice)
            {
                yield return ProfileLint.Caution(parameter.Number, "choices", $"{twice}: only a person can take the second", "say `is: no-counterpart` for the one that is not to be proposed");
            }
        }
    }

    /// <summary>What was guessed and not confirmed: the settings are as good as not offered.</summary>
    internal static IEnumerable<LintFinding> Guessed(DriveProfile profile)
    {
        var guessed = profile.Parameters.Where(p => p.Perhaps.Count > 0).ToList();
        if (guessed.Count > 0)
        {
            yield return ProfileLint.Caution(guessed[0].Number, "perhaps", $"what {guessed.Count} {(guessed.Count == 1 ? "row means is" : "rows mean is")} guessed and not confirmed, so that nothing is entered for {(guessed.Count == 1 ? "it" : "them")}", "compare each with the manual, and call `perhaps` `means` where it is right");
        }
    }

    private static bool IsSpeedChange(IReadOnlyList<Parameter> carrying) =>
        carrying.Count == 2
        && carrying.Count(p => p.Meaning is Meaning.Quantity { Conversion: Conversion.SpeedChange }) == 1
        && carrying.Count(p => p.Meaning is Meaning.Quantity { Conversion: Conversion.ChangeTime }) == 1;

    private static string? Doubled(Meaning.Choice choice)
    {
        foreach (var (first, said) in choice.Counterparts)
        {
            foreach (var (second, again) in choice.Counterparts)
            {
                if (first < second && said is not null && again is not null && said.SequenceEqual<SettingValue>(again))
                {
                    return $"choices {first} and {second} say the same";
                }
            }
        }

        return null;
    }
}
