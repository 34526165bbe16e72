using Runup.Commissioning.Survey;
using Runup.Files.Jobs.Keys;
using Runup.Quantities;

namespace Runup.Files.Jobs.Sections;

/// <summary>Keys of where the set stands.</summary>
internal sealed class PlaceSection(KeyList keys) : Section<PlaceSurvey>(keys)
{
    private readonly Key<Datum<Temperature>> ambient = keys.Quantity<Temperature>("ambient", "35 °C", "highest air temperature around the drive", Bound.Any);
    private readonly Key<Datum<Length>> altitude = keys.Quantity<Length>("altitude", "120 m", "above the sea", Bound.Any);
    private readonly Key<Datum<string>> explosiveZone = keys.Text("explosive-zone", "none", "none, or the zone or division of an explosive atmosphere at the motor");

    protected override PlaceSurvey Build(Values v) => new()
    {
        Ambient = v.Get(ambient),
        Altitude = v.Get(altitude),
        ExplosiveZone = v.Get(explosiveZone) is { } zone && IsNone(zone.Value) ? zone with { Value = "none" } : v.Get(explosiveZone),
    };

    // Whoever asks for a zone compares with this one word.
    private static bool IsNone(string zone) =>
        string.Equals(zone, "none", StringComparison.OrdinalIgnoreCase) || string.Equals(zone, "no", StringComparison.OrdinalIgnoreCase);
}
