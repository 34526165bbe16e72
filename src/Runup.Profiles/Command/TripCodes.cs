using Runup.Settings;

namespace Runup.Profiles;

/// <summary>A make's trip codes with their causes in our vocabulary; 0 is no trip.</summary>
/// <param name="Codes">Codes with their causes, in the make's order; several codes may have one cause.</param>
public sealed record TripCodes(IReadOnlyList<TripCode> Codes)
{
    /// <summary>No codes are known.</summary>
    public static TripCodes None { get; } = new([]);

    /// <summary>The cause of a code; null where the profile does not know it.</summary>
    public TripCause? CauseOf(long code)
    {
        foreach (var known in Codes)
        {
            if (known.Code == code)
            {
                return known.Cause;
            }
        }

        return code == 0 ? TripCause.None : null;
    }

    /// <summary>The first code of a cause; null where the make has none.</summary>
    public long? CodeOf(TripCause cause)
    {
        foreach (var known in Codes)
        {
            if (known.Cause == cause)
            {
                return known.Code;
            }
        }

        return cause == TripCause.None ? 0 : null;
    }
}

/// <summary>A make's code of a trip with its cause.</summary>
/// <param name="Code">The code.</param>
/// <param name="Cause">The cause.</param>
public sealed record TripCode(long Code, TripCause Cause);
