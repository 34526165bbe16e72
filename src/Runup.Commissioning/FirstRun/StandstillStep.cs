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
                    return Refused($"the drive is tripped ({answered.Value.Trip.Name()}); find the cause and reset it at the drive");
                case LinkReply<DriveStatus>.Answered answered when !Standstill.Is(answered.Value):
                    return Refused($"the motor does not stand: {answered.Value.State}, {answered.Value.OutputFrequencyHz:0.##} Hz");
                case LinkReply<DriveStatus>.Answered answered:
                    read.Add(answered.Value);
                    break;
                case LinkReply<DriveStatus>.Refused refused:
                    return Refused($"the drive's state can't be read: {refused.Why}");
                case LinkReply<DriveStatus>.Unanswered lost:
                    return new StepEnding.Ends(new FirstRunEnding.LinkFailed(lost.Why), lost.Why);
            }

            await Task.Delay(RunHold.Period, session.Time, cancellation);
        }

        var supply = session.Task.Job.Supply.Voltage.Value.Volts;
        var rated = session.Task.Plan.Number(Setting.MotorRatedCurrent) ?? session.Task.Job.Motor.Plate.Current.Value.Amperes;
        var outside = await session.Take(step.Id, "DC bus voltage", "V", new(Math.Sqrt(2) * supply, 1.36 * supply, 1.43 * supply), Mean(read, s => s.DcBusV));
        outside |= await session.Take(step.Id, "output current", "A", new(0, null, 0.05 * rated), Mean(read, s => s.OutputCurrentA));
        outside |= await session.Take(step.Id, "output frequency", "Hz", new(0, null, 0.05), Mean(read, s => s.OutputFrequencyHz));
        return outside ? new StepEnding.Failed("a reading at standstill lies outside what is expected") : new StepEnding.Passed();
    }

    private static double? Mean(List<DriveStatus> read, Func<DriveStatus, double?> of)
    {
        var values = read.Select(of).OfType<double>().ToList();
        return values.Count == 0 ? null : values.Average();
    }

    private static StepEnding.Ends Refused(string why) => new(new FirstRunEnding.RefusedForSafety(why), why);
}
