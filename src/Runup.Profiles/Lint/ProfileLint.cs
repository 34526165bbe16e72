namespace Runup.Profiles;

/// <summary>Looks through a whole profile for what would put a wrong value into a drive, or leave something undone.</summary>
public static class ProfileLint
{
    /// <summary>All findings, in the order of the profile's parameters within each kind.</summary>
    public static IReadOnlyList<LintFinding> Check(DriveProfile profile) =>
    [
        .. ReferenceLint.Check(profile),
        .. LimitLint.Check(profile),
        .. RangeLint.Check(profile),
        .. RegisterLint.Check(profile),
        .. MeaningLint.Check(profile),
        .. MeaningLint.Guessed(profile),
        .. BitsLint.Check(profile),
        .. UnitLint.Check(profile),
        .. OrderLint.Check(profile),
        .. EssentialsLint.Check(profile),
    ];

    internal static LintFinding Error(Parameter parameter, string? key, string found, string wouldDo) =>
        new(LintSeverity.Error, parameter.Number, key, found, wouldDo);

    internal static LintFinding Caution(string? parameter, string? key, string found, string wouldDo) =>
        new(LintSeverity.Caution, parameter, key, found, wouldDo);
}
