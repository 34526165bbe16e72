namespace Runup.Profiles;

/// <summary>Something that is wrong in a profile as a whole, which no single row shows.</summary>
/// <param name="Severity">Whether the profile can be used at all.</param>
/// <param name="Parameter">Number of the parameter that it concerns; null where it is the profile.</param>
/// <param name="Key">Key of the row in the profile's file that it concerns, such as <c>default</c>; null where it is the row.</param>
/// <param name="Found">What was found.</param>
/// <param name="WouldDo">What would do instead.</param>
public sealed record LintFinding(LintSeverity Severity, string? Parameter, string? Key, string Found, string WouldDo);

/// <summary>How much a finding matters.</summary>
public enum LintSeverity
{
    /// <summary>The profile can be used, but something cannot be done with it.</summary>
    Caution,

    /// <summary>A value could be entered that is not meant: the profile is not used.</summary>
    Error,
}
