using Runup.Settings;

namespace Runup.Profiles;

/// <summary>Says in a sentence how the value that is entered differs from what the plan wants.</summary>
public static class FitWords
{
    // What a display rounds off is nothing to a person until it is a hundredth of the value.
    private const double WorthSaying = 0.01;

    /// <summary>The difference in words, in the setting's unit; null where there is nothing to say.</summary>
    public static string? Of(Fit fit, Setting setting) => fit switch
    {
        Fit.Exact => null,
        Fit.Rounded r when Math.Abs(r.GivenSi - r.WantedSi) <= WorthSaying * Math.Abs(r.WantedSi) => null,
        Fit.Rounded r => $"rounded by the drive from {SettingText.Number(setting, r.WantedSi)} to {SettingText.Number(setting, r.GivenSi)}",
        Fit.OutOfRange o => $"differs: {SettingText.Number(setting, o.WantedSi)} is wanted, the drive goes only to {SettingText.Number(setting, o.GivenSi)}",
        _ => throw new InvalidOperationException("Every fit is told apart."),
    };
}
