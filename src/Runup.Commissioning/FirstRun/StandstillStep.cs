using Runup.Commissioning.Entry;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.FirstRun;

/// <summary>Reads the drive at standstill: not running, no trip, DC bus as the supply makes it, no current.</summary>
/// <remarks>
/// The idle DC bus charges to the peak of the line-to-line voltage, √2·U; a flat-topped supply lowers it a little: 1.36·U to 1.43·U is
/// accepted (common practice, derived from the peak). No current: up to 5 % of the motor's rated (common practice, no source).
/// </remarks>
internal static class StandstillStep
{
    private const int Rounds = 5;

    public static async Task<StepEnding> Run(FirstRunSession session, FirstRunStep step, CancellationToken cancellation)
    {
        List<DriveStatus> read = [];
        while (read.Count < Rounds)
        {
            switch (await session.Link.Status(cancellation))
            {
                case LinkReply<DriveStatus>.Answered answered when answered.Value.State is PowerState.Fault or PowerState.FaultReactionActive:
                    return StepEnding.Refused($"the drive is tripped ({answered.Value.Trip.Name()}); find the cause and reset it at the drive");
                case LinkReply<DriveStatus>.Answered answered when !Standstill.Is(answered.Value):
                    return StepEnding.Refused($"the motor does not stand: {answered.Value.State}, {answered.Value.OutputFrequencyHz:0.##} Hz");
                case LinkReply<DriveStatus>.Answered answered:
                    read.Add(answered.Value);
                    break;
                case LinkReply<DriveStatus>.Refused refused:
                    return StepEnding.Refused($"the drive's state can't be read: {refused.Why}");
                case LinkReply<DriveStatus>.Unanswered lost:
                    return new StepEnding.Ends(new FirstRunEnding.LinkFailed(lost.Why), lost.Why);
            }

            await Task.Delay(RunHold.Period, session.Time, cancellation);
        }

        var outside = false;
        foreach (var (kind, unit, expected, of) in Expected(session.Task))
        {
            outside |= await session.Take(step.Id, ReadingNames.Of(kind), unit, expected, Mean(read, of));
        }

        return outside ? new StepEnding.Failed("a reading at standstill lies outside what is expected") : new StepEnding.Passed();
    }

    /// <summary>What is read at standstill, and what is expected.</summary>
    public static IReadOnlyList<(ReadingKind Kind, string Unit, Expected Expected, Func<DriveStatus, double?> Of)> Expected(FirstRunTask task)
    {
        var supply = task.Job.Supply.Voltage.Value.Volts;
        var rated = task.Plan.Number(Setting.MotorRatedCurrent) ?? task.Job.Motor.Plate.Current.Value.Amperes;
        return
        [
            (ReadingKind.DcBusVoltage, "V", new(Math.Sqrt(2) * supply, 1.36 * supply, 1.43 * supply), s => s.DcBusV),
            (ReadingKind.OutputCurrent, "A", new(0, null, 0.05 * rated), s => s.OutputCurrentA),
            (ReadingKind.OutputFrequency, "Hz", new(0, null, 0.05), s => s.OutputFrequencyHz),
        ];
    }

    private static double? Mean(List<DriveStatus> read, Func<DriveStatus, double?> of)
    {
        var values = read.Select(of).OfType<double>().ToList();
        return values.Count == 0 ? null : values.Average();
    }
}
