using Runup.Commissioning.Checks.Control;
using Runup.Commissioning.Checks.Drive;
using Runup.Commissioning.Checks.Machine;
using Runup.Commissioning.Checks.Motor;
using Runup.Commissioning.Checks.Plate;
using Runup.Commissioning.Checks.Supply;

namespace Runup.Commissioning.Checks;

/// <summary>All checks, in the order in which findings are read.</summary>
public static class CheckList
{
    /// <summary>The checks that need no more than a plate.</summary>
    public static IReadOnlyList<PlateCheck> OfPlate { get; } =
    [
        new KindOfMotor(), new PowerUnit(), new BaseFrequency(), new VoltageConnection(), new PoleNumber(), new FullLoadSpeed(), new LinePhaseCurrent(), new PowerBalance(),
        new PrintedPowerFactor(), new PrintedEfficiency(), new ServiceFactor(), new StartingFigures(), new Marks(),
    ];

    /// <summary>All checks of a job.</summary>
    public static IReadOnlyList<Check> OfJob { get; } =
    [
        .. OfPlate,
        new DriveVoltage(), new BusLevels(), new SinglePhaseInput(), new DriveCurrent(), new SizeByPower(), new Overload(), new Ambient(), new Altitude(), new Switching(), new ShortCircuitRating(),
        new Breakaway(), new TorqueRange(), new RunUp(), new Stop(), new BrakingNeeded(), new ResistorFits(), new RmsTorque(), new LowSpeedCooling(),
        new Overspeed(), new CriticalSpeed(), new Overhauling(), new Hoist(),
        new FieldWeakening(), new EightySevenHertz(), new Boost(), new OverloadClass(), new StatedInertia(), new Duty(), new ExplosiveAtmosphere(), new ResidualCurrent(),
        new Restart(), new BusLoss(), new RunSource(), new Direction(), new AnalogueScaling(), new SeveralMotors(),
    ];

    /// <summary>Puts every question to a job.</summary>
    public static CheckReport Judge(JobContext context) =>
        new([.. OfJob.Select(check => check.Judge(context))], context.Assumptions);
}
