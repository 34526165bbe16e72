using Runup.Commissioning.Checks;
using Runup.Engineering.Motors;
using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>What the drive must know of its motor: the plate, in the column of the connection in use.</summary>
internal static class MotorData
{
    internal static void Plan(PlanBuilder plan, JobContext context)
    {
        var plate = context.Job.Motor.Plate;
        var inHorsepower = Checks.Plate.PowerWording.Of(plate.Output).InHorsepower;
        plan.Choice(Setting.PowerUnit, inHorsepower ? "hp" : "kW", Rank.Must, $"the plate gives the output in {(inHorsepower ? "hp" : "kW")}; entered before the output, since it changes what that number means", PlanBuilder.PlateSource);
        var (count, output) = (context.MotorCount, plate.Output.AsWritten ?? Said.Kilowatts(plate.Output.Value.Watts));
        plan.Number(
            Setting.MotorRatedPower,
            count * plate.Output.Value.Watts,
            Rank.Must,
            count > 1 ? $"{count} motors of {output} together: the drive sees them as one" : $"shaft output on the plate, {output}",
            PlanBuilder.PlateSource);
        plan.Number(Setting.MotorRatedVoltage, plate.Voltage.Value.Volts, Rank.Must, $"line to line{Connection(plate.Connection?.Value)}", PlanBuilder.PlateSource);
        plan.Number(
            Setting.MotorRatedCurrent,
            count * plate.Current.Value.Amperes,
            Rank.Must,
            count > 1 ? $"{count} motors of {Said.Number(plate.Current.Value.Amperes)} A together; the drive's protection sees only the sum" : "line current on the plate; the motor's protection stands on it",
            PlanBuilder.PlateSource);
        plan.Number(Setting.MotorRatedFrequency, plate.Frequency.Value.Hertz, Rank.Must, "frequency of the same column", PlanBuilder.PlateSource);
        plan.Number(Setting.MotorRatedSpeed, plate.Speed.Value.RadiansPerSecond, Rank.Must, context.Plate.IsSynchronous ? "speed on the plate, in step with its frequency" : "full-load speed, not the synchronous one: the drive reckons slip from it", PlanBuilder.PlateSource);
        PowerFactorOf(plan, context);
        if (context.Nameplate is { } nameplate)
        {
            plan.Number(
                Setting.MotorPoleCount,
                nameplate.Poles.Poles,
                Rank.Must,
                $"{nameplate.Poles.Poles} poles: 120·f/p = {Said.Number(nameplate.SynchronousSpeed.Rpm, 4)} rpm goes with {Said.Number(nameplate.Speed.Rpm, 4)} rpm at full load",
                plate.Poles is null ? "p = 2·⌊60·f/n⌋" : PlanBuilder.PlateSource);
        }

        if (plate.Connection?.Value is { } connection)
        {
            plan.Choice(Setting.MotorConnection, connection == WindingConnection.Star ? "star" : "delta", Rank.Should, "as the links in the terminal box are", PlanBuilder.PlateSource);
        }
    }

    private static void PowerFactorOf(PlanBuilder plan, JobContext context)
    {
        if (context.Job.Motor.Plate.PowerFactor?.Value.Ratio is > 0 and <= 1 and var printed)
        {
            plan.Number(Setting.MotorPowerFactor, printed, Rank.Must, context.Plate.IsSynchronous ? "full-load power factor on the plate" : "full-load power factor on the plate; the drive reckons the magnetizing current from it", PlanBuilder.PlateSource);
        }
        else if (context.Fit is CircuitFit.Fitted fitted)
        {
            plan.Number(
                Setting.MotorPowerFactor,
                Math.Round(fitted.Rated.PowerFactor.Ratio, 2),
                Rank.Should,
                "not printed: η·cos φ = P/(√3·U·I), split as the motor's circuit has it",
                "circuit fitted to the plate");
        }
    }

    private static string Connection(WindingConnection? connection) => connection switch
    {
        WindingConnection.Star => ", the star column",
        WindingConnection.Delta => ", the delta column",
        _ => string.Empty,
    };
}
