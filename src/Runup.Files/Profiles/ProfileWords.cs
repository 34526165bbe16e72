using Runup.Profiles;

namespace Runup.Files.Profiles;

/// <summary>The words of a profile's file that others show, too.</summary>
public static class ProfileWords
{
    /// <summary>The word of an access level, such as <c>any-time</c>.</summary>
    public static string Access(ParameterAccess access) => ParameterReader.WordOf(access);
}
