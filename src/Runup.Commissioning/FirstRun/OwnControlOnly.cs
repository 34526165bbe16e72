using Runup.Commissioning.Survey;
using Runup.Settings;

namespace Runup.Commissioning.FirstRun;

/// <summary>When Runup sends no run command at all: the machine is run from its own control, and Runup reads.</summary>
internal static class OwnControlOnly
{
    /// <summary>Why; null where the guided first run may command the motor.</summary>
    public static string? Why(FirstRunTask task) =>
        ByMachine(task) ?? (task.Profile.Command is null ? "The profile does not tell how the drive is commanded over the bus." : MissingGuard(task));

    /// <summary>Why the machine demands it, whatever the drive offers; null where it does not.</summary>
    public static string? ByMachine(FirstRunTask task) => ByMachine(task.Job, task.LoadDrivesMotor);

    /// <summary>The same of a job, where the checks say whether its load drives the motor.</summary>
    public static string? ByMachine(Job job, bool loadDrivesMotor)
    {
        var machine = job.Machine;
        if (machine.Load.Value == LoadKind.Hoisting)
        {
            return "A hoist is run from its own control only.";
        }

        return loadDrivesMotor || Overhauls(machine.Torque?.Value.NewtonMetres) || machine.Curve?.Any(p => p.Torque.NewtonMetres * p.Speed.RadiansPerSecond < 0) == true
            || job.Operation.Cycle.Any(c => c.Torque.Value.NewtonMetres * c.Speed.Value.RadiansPerSecond < 0)
            ? "The load can drive the motor; it is run from its own control only."
            : null;
    }

    private static bool Overhauls(double? torque) => torque < 0;

    private static string? MissingGuard(FirstRunTask task)
    {
        foreach (var needed in (Setting[])[Setting.RunCommandSource, Setting.FrequencyReferenceSource, Setting.BusTimeout, Setting.BusLossAction])
        {
            if (task.Profile.Carrying(needed).Count == 0)
            {
                return $"The drive offers no {needed.Name}, without which it is not run over the bus.";
            }
        }

        return null;
    }
}
