namespace Runup.Profiles;

/// <summary>How a setting stands in a drive's own parameters.</summary>
public enum Mapping
{
    /// <summary>One parameter says the same; at most the unit differs.</summary>
    Direct,

    /// <summary>Said otherwise: worked out with other parameters, or chosen together with other settings.</summary>
    Converted,

    /// <summary>The drive has no parameter for it.</summary>
    NotOffered,

    /// <summary>The drive has a parameter for it, but a person has to choose its value.</summary>
    NeedsChoice,
}

/// <summary>The mappings' names in JSON.</summary>
public static class MappingNames
{
    /// <summary>The mapping's name, such as <c>not-offered</c>.</summary>
    public static string Name(this Mapping mapping) => mapping switch
    {
        Mapping.Direct => "direct",
        Mapping.Converted => "converted",
        Mapping.NotOffered => "not-offered",
        Mapping.NeedsChoice => "needs-choice",
        _ => throw new ArgumentOutOfRangeException(nameof(mapping), mapping, null),
    };
}
