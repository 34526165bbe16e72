using Runup.Commissioning.Checks;
using Runup.Profiles;
using Runup.Quantities;

namespace Runup.Commissioning.Handover;

/// <summary>The set in a few lines.</summary>
internal static class SetFacts
{
    public static IReadOnlyList<(string Name, string Value)> Of(JobContext context, DriveProfile profile, DriveSize size, RecordStory story)
    {
        var job = context.Job;
        var plate = job.Motor.Plate;
        var machine = job.Machine;
        return
        [
            ("Motor", Join(BothUnits.Write(plate.Output.Value), BothUnits.Write(plate.Voltage.Value), plate.Connection?.Value.Words(),
                BothUnits.Write(plate.Current.Value), BothUnits.Write(plate.Frequency.Value), BothUnits.Write(plate.Speed.Value))),
            ("Rated torque", context.Nameplate is { } known ? $"{BothUnits.Write(known.RatedTorque)}, which is 100 % in the readings" : "not known from the plate"),
            ("Drive", Join($"{profile.Title}, size {size.Name}", story.LastRead?.Body.Identity is { } identity ? $"answers as {identity}" : null)),
            ("Supply", Join(BothUnits.Write(job.Supply.Voltage.Value), BothUnits.Write(job.Supply.Frequency.Value), job.Supply.Earthing?.Value)),
            ("Machine", Join($"{machine.Load.Value.Words()} load",
                machine.Torque is { } torque && machine.AtSpeed is { } speed ? $"{BothUnits.Write(torque.Value)} at {BothUnits.Write(speed.Value)}" : null)),
            ("Range", Join($"{Hertz(job.Operation.MinimumFrequency?.Value)} to {Hertz(job.Operation.MaximumFrequency.Value)}", DirectionsOf(job.Operation.Directions?.Value))),
        ];
    }

    private static string? DirectionsOf(string? directions) => directions switch
    {
        "both" => "both directions",
        "forward" => "forward only",
        _ => directions,
    };

    private static string Hertz(ElectricalFrequency? frequency) => frequency is { } f ? BothUnits.Write(f) : "0 Hz";

    private static string Join(params string?[] parts) => string.Join(", ", parts.Where(p => !string.IsNullOrWhiteSpace(p)));
}
