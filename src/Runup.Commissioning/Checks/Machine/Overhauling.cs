using Runup.Commissioning.Survey;

namespace Runup.Commissioning.Checks.Machine;

/// <summary>A load that drives its motor, against what takes its power for as long as it lasts.</summary>
internal sealed class Overhauling() : Check("machine.overhauling", Stage.Coupled)
{
    private const double Tolerance = 1.02;
    private const string Needed = "A braking resistor sized for the longest stretch that the load drives, or a drive that feeds back.";

    private static readonly Basis Balance = new Basis.Physics("P = T_load·ω·η_back less the losses of motor and drive, for as long as the load drives");

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var drives = context.Meant.Motion?.Regeneration is not null || context.Job.Machine.Load.Value == LoadKind.Hoisting
            || context.Job.Machine.Curve?.Any(point => point.Torque.NewtonMetres < 0) == true || DutyAtMotor.DrivenParts(context).Any();
        return !drives ? Fine("the load never drives the motor")
            : context.Job.Machine.GearEfficiencyBack?.Value.Ratio == 0 ? Fine("the gear is said to lock itself (gear-efficiency-back: 0 %): the load never drives the motor")
            : JobCheck.MissingForMotion(context) is { } missing ? WithoutFigures(context, missing)
            : AgainstResistor(context, context.Meant.MotorCount * (context.Meant.Motion!.Regeneration?.AtBus.Watts ?? DutyAtMotor.DrivenParts(context).Select(part => part.Power_W).DefaultIfEmpty(0).Max()));
    }

    private CheckResult WithoutFigures(JobContext context, string missing) => context.Job.Drive.BrakingResistor is not null
        ? Unknown(missing, "how much power the load brings back, and whether the resistor takes it")
        : Finding(Severity.Blocker, "The load drives the motor and nothing takes its power", "While the load drives, its whole power comes back to the DC bus for as long as it lasts, and there is no braking resistor.", Needed, null, null);

    private CheckResult AgainstResistor(JobContext context, double power_W)
    {
        if (context.Meant.Motion!.Regeneration is { IsHeld: false })
        {
            return Finding(Severity.Blocker, "The motor cannot hold the load", "At some frequency the load drives harder than the motor's largest braking torque: it runs away.", "A larger motor or gear ratio, or less load.", null, null);
        }

        if (power_W <= 0)
        {
            return Finding(Severity.Note, "The load drives the motor a little", "The load drives the motor, and the losses of motor and drive take all of its power.", "Nothing for the power; no run command is sent over the bus for such a load.", 0, null);
        }

        var comes = $"While the load drives, up to {Said.Kilowatts(power_W)} comes back to the DC bus for as long as it lasts";
        if (context.Job.Drive.BrakingResistor is not { } resistor || context.Rating.LowestBrakingResistance is null)
        {
            return Finding(Severity.Blocker, "The load drives the motor and nothing takes its power", $"{comes}, and there is no braking resistor{(context.Job.Drive.BrakingResistor is null ? string.Empty : " that the drive could switch")}.", Needed, power_W, 0);
        }

        var most_W = resistor.Resistance.Value.Ohms > 0 ? context.Rating.ChopperLevel.Volts * context.Rating.ChopperLevel.Volts / resistor.Resistance.Value.Ohms : double.PositiveInfinity;
        return power_W > most_W * Tolerance
            ? Finding(Severity.Blocker, "The braking resistor cannot hold the load", $"{comes}; {Said.Number(resistor.Resistance.Value.Ohms)} Ω takes {Said.Kilowatts(most_W)} at the chopper's level, so the bus rises until the drive trips.", $"At most {Said.Number(most_W * resistor.Resistance.Value.Ohms / power_W)} Ω, as far as the chopper allows.", power_W, most_W)
            : OfItsPower(context, resistor, power_W, comes);
    }

    /// <summary>Against the continuous power: over the cycle where the job names one, else for how much of the time it is enough.</summary>
    private CheckResult.Violated OfItsPower(JobContext context, BrakingResistorSurvey resistor, double power_W, string comes)
    {
        if (resistor.ContinuousPower?.Value.Watts is not { } continuous_W)
        {
            return Finding(Severity.Caution, "The load drives the motor", $"{comes}; the resistor's continuous power is not named (drive.braking-resistor).", "Size the resistor by the longest stretch that the load drives, not by a stop. Run it from the machine's own control: Runup sends it no run command.", power_W, null);
        }

        if (DutyAtMotor.MeanDriven_W(context) is { } mean_W)
        {
            mean_W *= context.Meant.MotorCount;
            return mean_W > continuous_W * Tolerance
                ? Finding(Severity.Blocker, "The load that drives overheats the braking resistor", $"{comes}, {Said.Number(mean_W)} W in the mean of the cycle; the resistor is for {Said.Number(continuous_W)} W.", "A resistor for more continuous power, or longer pauses.", mean_W, continuous_W)
                : Finding(Severity.Caution, "The load drives the motor", $"{comes}, {Said.Number(mean_W)} W in the mean of the cycle, and the resistor is for {Said.Number(continuous_W)} W.", "Run it from the machine's own control, with people away from the load: Runup sends it no run command.", mean_W, continuous_W);
        }

        return power_W <= continuous_W * Tolerance
            ? Finding(Severity.Caution, "The load drives the motor", $"{comes}; the resistor is for {Said.Kilowatts(continuous_W)} continuously and takes it however long.", "Run it from the machine's own control, with people away from the load: Runup sends it no run command.", power_W, continuous_W)
            : Finding(Severity.Caution, "The braking resistor does not take the load for long", $"{comes}; the resistor is for {Said.Number(continuous_W)} W continuously, which is {Said.Percent(continuous_W / power_W, 2)} of the time.", "Name the cycle (operation.cycle), which decides it, or a resistor for more continuous power; its maker says how long it takes more at a stretch.", power_W, continuous_W);
    }

    private CheckResult.Violated Finding(Severity severity, string title, string explanation, string remedy, double? value, double? limit) => new(Id, severity, Blocks, Balance)
    {
        Title = title,
        Explanation = explanation,
        Remedy = remedy,
        Value = value,
        Limit = limit,
        Unit = value is null ? null : "W",
    };
}
