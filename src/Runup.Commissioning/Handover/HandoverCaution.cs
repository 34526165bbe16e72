using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Survey;
using Runup.Settings;

namespace Runup.Commissioning.Handover;

/// <summary>What can hurt whoever works on the set later.</summary>
/// <param name="Title">What about.</param>
/// <param name="Words">What to know or do.</param>
public sealed record HandoverCaution(string Title, string Words)
{
    /// <summary>The cautions of a set.</summary>
    public static IReadOnlyList<HandoverCaution> Of(Job job, SettingSet plan, RecordStory story)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(story);
        return
        [
            new("Who can start it", story.Control?.Body.Note ?? "Who has control of the motor was not recorded. Find out before safe torque off is closed."),
            Restart(plan),
            new("Stopping", "A stop by software, over the bus or at a page, is not an emergency stop and not safe torque off." + StopDevice(story)),
            new("Terminals", SafetyWords.BeforeTerminals),
            .. job.Motor.Kind.Value == MotorKind.PermanentMagnet
                ? [new HandoverCaution("Magnets", SafetyWords.Magnets)]
                : (HandoverCaution[])[],
        ];
    }

    private static HandoverCaution Restart(SettingSet plan)
    {
        var restarts = plan.Choice(Setting.RestartAfterPowerLoss) is "on";
        var resets = plan.Number(Setting.AutomaticReset) is > 0;
        return new("Starting by itself", (restarts, resets) switch
        {
            (true, true) => "The settings let it start by itself when power returns, and after a trip.",
            (true, false) => "The settings let it start by itself when power returns.",
            (false, true) => "The settings let it start by itself after a trip.",
            _ => "The settings do not ask for a restart by itself. A run command that stays closed may still start it when power returns: see the drive's manual.",
        });
    }

    // Of "signals: red button at the platform" what the person said.
    private static string Said(string note) => note.Contains(": ", StringComparison.Ordinal) ? note[(note.IndexOf(": ", StringComparison.Ordinal) + 2)..] : note;

    private static string StopDevice(RecordStory story) =>
        story.Confirmations.LastOrDefault(c => c.Body.What is "machine-stop-tested") is { Body: { Note: { } note } body }
            ? $" The machine's stop device ({Said(note)}) was operated, as {body.By} confirmed."
            : " No test of the machine's stop device is on record.";
}
