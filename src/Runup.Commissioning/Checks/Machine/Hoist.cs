using Runup.Commissioning.Survey;

namespace Runup.Commissioning.Checks.Machine;

/// <summary>Rules for loads that are lifted.</summary>
internal sealed class Hoist() : Check("machine.hoist", Stage.Bump)
{
    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (context.Job.Machine.Load.Value != LoadKind.Hoisting)
        {
            return Fine("nothing is lifted");
        }

        return context.Job.Motor.Brake?.Value == false
            ? new CheckResult.Violated(Id, Severity.Blocker, Blocks, new Basis.SafetyRule("a lifted load is held by a brake, not by a motor"))
            {
                Title = "A hoist without a brake",
                Explanation = "The load is lifted and the motor is said to have no brake: when the drive trips, it falls.",
                Remedy = "A mechanical brake that closes without power, opened only after the torque check.",
            }
            : new CheckResult.Violated(Id, Severity.Caution, Blocks, new Basis.SafetyRule("no run command is sent to loads that are lifted or drive their motor"))
            {
                Title = "A hoist is run from its own control",
                Explanation = "The load can fall: every step of the first run is done from the machine's own control, and this tool only reads.",
                Remedy = "Check torque before the brake opens, and the order of release, with a test load and people away from under it; what lifts people is out of scope.",
            };
    }
}
