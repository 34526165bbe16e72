using Runup.Quantities;

namespace Runup.Commissioning.Survey;

/// <summary>Cable from drive to motor.</summary>
public sealed record CableSurvey
{
    /// <summary>Length.</summary>
    public Datum<Length>? Length { get; init; }

    /// <summary>Conductor cross-section.</summary>
    public Datum<CrossSection>? Section { get; init; }

    /// <summary>Conductor: copper or aluminium.</summary>
    public Datum<string>? Conductor { get; init; }

    /// <summary>Whether screened.</summary>
    public Datum<bool>? Screened { get; init; }

    /// <summary>Surge impedance.</summary>
    public Datum<Resistance>? SurgeImpedance { get; init; }

    /// <summary>Speed of a wave.</summary>
    public Datum<LinearSpeed>? WaveSpeed { get; init; }

    /// <summary>none, reactor, dv-dt-filter or sine-filter.</summary>
    public Datum<string>? OutputDevice { get; init; }

    /// <summary>Whether there is a switch between drive and motor.</summary>
    public Datum<bool>? OutputSwitch { get; init; }
}
