using Runup.Quantities;

namespace Runup.Commissioning.Survey;

/// <summary>Where the set stands.</summary>
public sealed record PlaceSurvey
{
    /// <summary>Air around the drive.</summary>
    public Datum<Temperature>? Ambient { get; init; }

    /// <summary>Above the sea.</summary>
    public Datum<Length>? Altitude { get; init; }

    /// <summary>none, or the zone of an explosive atmosphere.</summary>
    public Datum<string>? ExplosiveZone { get; init; }
}
