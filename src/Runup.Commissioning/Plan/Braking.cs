using Runup.Commissioning.Checks;
using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>How it stops, and where the energy goes.</summary>
internal static class Braking
{
    internal static void Plan(PlanBuilder plan, JobContext context)
    {
        plan.Choice(Setting.StoppingMethod, "ramp", Rank.Must, "a stop on the ramp, so that machine and bus are led down", PlanBuilder.Practice);
        if (context.Job.Drive.BrakingResistor is { } resistor && context.Rating.LowestBrakingResistance is not null)
        {
            plan.Choice(Setting.OvervoltageControl, "off", Rank.Must, "the resistor takes the energy; stretching the ramp would keep the chopper from its level", "drive profile, chopper level and overvoltage control");
            plan.Choice(Setting.BrakingChopper, "on", Rank.Must, $"a resistor of {Said.Number(resistor.Resistance.Value.Ohms)} Ω is fitted", PlanBuilder.JobSource);
            plan.Number(Setting.BrakingResistorResistance, resistor.Resistance.Value.Ohms, Rank.Must, "the resistor that is fitted", PlanBuilder.JobSource, context.Rating.LowestBrakingResistance?.Ohms, MachineFigures.Of(context).BrakingResistorOhmMax);
            if (resistor.ContinuousPower?.Value.Watts is { } watts)
            {
                plan.Number(Setting.BrakingResistorPower, watts, Rank.Must, "continuous power of the resistor; its protection stands on it", PlanBuilder.JobSource);
            }
        }
        else
        {
            plan.Choice(Setting.OvervoltageControl, "on", Rank.Must, "no braking resistor: a stop that lifts the DC bus is stretched and does not trip", PlanBuilder.Practice);
            plan.Choice(Setting.BrakingChopper, "off", Rank.Should, "no braking resistor is fitted", PlanBuilder.JobSource);
        }
    }
}
