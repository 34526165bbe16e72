using Runup.Commissioning.Survey;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>Whether the motor is of the kind whose behaviour is predicted.</summary>
internal sealed class KindOfMotor() : PlateCheck("plate.kind-of-motor")
{
    /// <inheritdoc/>
    public override CheckResult Judge(PlateContext context) => context.Motor.Kind.Value switch
    {
        MotorKind.Induction => Fine("a squirrel-cage induction motor"),
        MotorKind.PermanentMagnet => Synchronous("permanent-magnet", "Its terminals are live while the shaft turns: lock the shaft before work on them."),
        MotorKind.SynchronousReluctance => Synchronous("synchronous reluctance", "Make sure that the drive has a control method for this kind."),
        _ => Unknown("the kind of motor (motor.kind)", "whether it may be run on V/f, and every prediction"),
    };

    private CheckResult.Violated Synchronous(string kind, string remedy) =>
        new(Id, Severity.Caution, Blocks, new Basis.SafetyRule("only induction motors are predicted"))
        {
            Title = "Not an induction motor",
            Explanation = $"A {kind} motor: settings, sheet, entry and record are served, but no current, torque or speed is predicted for it.",
            Remedy = remedy,
        };
}
