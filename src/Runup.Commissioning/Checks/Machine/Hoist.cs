using Runup.Commissioning.Survey;

namespace Runup.Commissioning.Checks.Machine;

/// <summary>Rules for loads that are lifted, and who opens a mechanical brake.</summary>
internal sealed class Hoist() : Check("machine.hoist", Stage.Bump)
{
    private const string Order = "the motor builds up torque against the closed brake, its current is checked, only then the brake opens; on the way down the brake closes while the motor still carries";

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var brake = context.Job.Motor.Brake?.Value;
        var relay = context.Job.Control.BrakeRelay?.Value;
        if (context.Job.Machine.Load.Value != LoadKind.Hoisting)
        {
            return brake == true && relay is null ? BrakeOfAnother() : Fine(brake == true ? $"nothing is lifted; relay {relay} of the drive opens the brake" : "nothing is lifted");
        }

        return brake == false ? WithoutBrake() : new CheckResult.Violated(Id, Severity.Caution, Blocks, new Basis.SafetyRule("no run command is sent to loads that are lifted or drive their motor"))
        {
            Title = "A hoist is run from its own control",
            Explanation = $"The load can fall: every step of the first run is done from the machine's own control, and this tool only reads. {Opening(brake, relay)}",
            Remedy = $"Prove the order of release with a test load and people away from under it: {Order}. What lifts people is out of scope.",
        };
    }

    /// <summary>Who opens the brake, and with it whether the settings say anything of it.</summary>
    private static string Opening(bool? brake, int? relay) => (brake, relay) switch
    {
        (true, { } number) => $"Relay {number} of the drive opens the brake: its levels are in the settings, predicted and not proved.",
        (true, null) => "Nobody says what opens the brake (control.brake-relay), so no setting of the drive's brake function is planned: they stay at factory values, for the person who wired the brake to decide.",
        _ => "Nobody says whether there is a brake (motor.brake); no setting of the drive's brake function is planned.",
    };

    private CheckResult.Violated WithoutBrake() => new(Id, Severity.Blocker, Blocks, new Basis.SafetyRule("a lifted load is held by a brake, not by a motor"))
    {
        Title = "A hoist without a brake",
        Explanation = "The load is lifted and the motor is said to have no brake: when the drive trips, it falls.",
        Remedy = "A mechanical brake that closes without power, opened only after the torque check.",
    };

    private CheckResult.Violated BrakeOfAnother() => new(Id, Severity.Note, Blocks, new Basis.JobData("motor.brake without control.brake-relay"))
    {
        Title = "What opens the brake is not said",
        Explanation = "The motor has a mechanical brake, and nobody says what opens it (control.brake-relay): no setting of the drive's brake function is planned, they stay at factory values.",
        Remedy = "Name the relay, or see that the machine's own control opens the brake before the motor turns.",
    };
}
