using Runup.Commissioning.Survey;
using Runup.Engineering;

namespace Runup.Commissioning.Checks;

/// <summary>What the surveyor himself marked as assumed, among the data that decide something.</summary>
internal static class SurveyedAssumptions
{
    internal static IReadOnlyList<Assumption> Of(Job job)
    {
        var found = new List<Assumption>();
        Supply(job.Supply, found);
        Motor(job.Motor, found);
        Machine(job.Machine, found);
        Add(found, "place.ambient", job.Place.Ambient);
        Add(found, "place.altitude", job.Place.Altitude);
        Add(found, "operation.maximum-frequency", job.Operation.MaximumFrequency);
        Add(found, "cable.length", job.Cable.Length);
        return found;
    }

    private static void Supply(SupplySurvey supply, List<Assumption> found)
    {
        Add(found, "supply.voltage", supply.Voltage);
        Add(found, "supply.frequency", supply.Frequency);
        Add(found, "supply.fault-level", supply.FaultLevel);
    }

    private static void Motor(MotorSurvey motor, List<Assumption> found)
    {
        Add(found, "motor.plate.output", motor.Plate.Output);
        Add(found, "motor.plate.voltage", motor.Plate.Voltage);
        Add(found, "motor.plate.current", motor.Plate.Current);
        Add(found, "motor.plate.frequency", motor.Plate.Frequency);
        Add(found, "motor.plate.speed", motor.Plate.Speed);
        Add(found, "motor.plate.power-factor", motor.Plate.PowerFactor);
        Add(found, "motor.plate.efficiency", motor.Plate.Efficiency);
        Add(found, "motor.inertia", motor.Inertia);
    }

    private static void Machine(MachineSurvey machine, List<Assumption> found)
    {
        Add(found, "machine.torque", machine.Torque);
        Add(found, "machine.at-speed", machine.AtSpeed);
        Add(found, "machine.breakaway-torque", machine.BreakawayTorque);
        Add(found, "machine.inertia", machine.Inertia);
        Add(found, "machine.gear-ratio", machine.GearRatio);
        Add(found, "machine.gear-efficiency", machine.GearEfficiency);
        Add(found, "machine.largest-speed", machine.LargestSpeed);
    }

    private static void Add<T>(List<Assumption> found, string key, Datum<T>? datum)
    {
        if (datum is { From: Provenance.Assumed })
        {
            found.Add(new(key, datum.AsWritten ?? datum.Value?.ToString() ?? string.Empty, datum.Note is { } note ? $"assumed in the job file: {note}" : "assumed in the job file", false));
        }
    }
}
