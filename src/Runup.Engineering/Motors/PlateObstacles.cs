using System.Globalization;

namespace Runup.Engineering.Motors;

/// <summary>What makes it pointless to look for a circuit: values that no induction motor has.</summary>
internal static class PlateObstacles
{
    // Far outside what is built (a watch motor; a ship's): keeps the arithmetic away from overflow, rejects nothing that turns.
    private const double Smallest = 1e-3;
    private const double Largest = 1e9;
    private const double LargestSlip = 0.5;
    private const double SmallestSlip = 1e-5;
    private const int MostPoles = 200;

    internal static IEnumerable<FitObstacle> Of(Nameplate plate)
    {
        var values = new (PlateDatum Datum, double Value)[]
        {
            (PlateDatum.Output, plate.Output.Watts),
            (PlateDatum.Voltage, plate.Voltage.Volts),
            (PlateDatum.Current, plate.Current.Amperes),
            (PlateDatum.Frequency, plate.Frequency.Hertz),
            (PlateDatum.Speed, plate.Speed.RadiansPerSecond),
        };
        var outside = values.Where(value => !(value.Value is > Smallest and < Largest))
            .Select(value => new FitObstacle(value.Datum, string.Create(CultureInfo.InvariantCulture, $"{value.Value:G4} (SI) is no value of a motor")))
            .ToList();
        return outside.Count > 0 ? outside : PolesAndSlip(plate);
    }

    private static IEnumerable<FitObstacle> PolesAndSlip(Nameplate plate)
    {
        if (plate.PrintedPoles is { Poles: < 2 or > MostPoles } || plate.Frequency.RadiansPerSecond / plate.Speed.RadiansPerSecond > MostPoles)
        {
            return [new FitObstacle(PlateDatum.Poles, $"no number of poles from 2 to {MostPoles} goes with this frequency and speed")];
        }

        return plate.RatedSlip.Ratio switch
        {
            < SmallestSlip => [new FitObstacle(PlateDatum.Speed, "the full-load speed is not below synchronous speed")],
            > LargestSlip => [new FitObstacle(PlateDatum.Speed, "the full-load speed is less than half of synchronous speed")],
            _ => [],
        };
    }
}
