using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Settings;

namespace Runup.Commissioning.Comparison;

/// <summary>What a setting's value means for a set, without running it: held against plate, machine and job.</summary>
internal static class ValueConsequences
{
    private const double Rounding = 0.005;
    private const int Digits = 3;

    private delegate string? Rule(SettingSet held, JobContext context);

    private static readonly IReadOnlyDictionary<Setting, Rule> Rules = new Dictionary<Setting, Rule>
    {
        [Setting.MaximumFrequency] = SpeedConsequences.OfMaximum,
        [Setting.MotorOverloadCurrent] = CurrentConsequences.OfOverload,
        [Setting.CurrentLimit] = CurrentConsequences.OfLimit,
        [Setting.BaseFrequency] = FluxConsequence.Of,
        [Setting.MaximumOutputVoltage] = FluxConsequence.Of,
        [Setting.MotorThermalSensor] = (held, context) => held.Choice(Setting.MotorThermalSensor) is "none" && context.Job.Motor.ThermalSensor?.Value is { } fitted and not "none" ? $"the {fitted} in the winding is not looked at" : null,
        [Setting.MotorCooling] = (held, context) => held.Choice(Setting.MotorCooling) is "separate-fan" && Cooling.HasOwnFan(context.Job) is false ? "the fan turns with the shaft: the motor is not protected at low speed" : null,
        [Setting.PhaseLoss] = (held, context) => held.Choice(Setting.PhaseLoss) is not "trip" && context.Rating.SupplyPhases > 1 ? "a lost supply phase does not stop it" : null,
        [Setting.OutputPhaseLoss] = (held, _) => held.Choice(Setting.OutputPhaseLoss) is not "trip" ? "a lost motor phase does not stop it" : null,
        [Setting.EarthFault] = (held, _) => held.Choice(Setting.EarthFault) is not "trip" ? "an earth fault at the output does not stop it" : null,
        [Setting.RestartAfterPowerLoss] = (held, _) => held.Choice(Setting.RestartAfterPowerLoss) is "on" ? "it starts by itself when power returns" : null,
        [Setting.AutomaticReset] = (held, _) => held.Number(Setting.AutomaticReset) is > 0 and var attempts ? $"it resets a trip by itself, up to {Said.Number(attempts)} times, and may start again" : null,
        [Setting.BusLossAction] = (held, _) => held.Choice(Setting.BusLossAction) is "none" or "hold" ? "it runs on when the bus is silent" : null,
        [Setting.PermittedDirection] = (held, context) => held.Choice(Setting.PermittedDirection) is "both" && context.Job.Operation.Directions?.Value is not "both" ? "it can be turned backward" : null,
        [Setting.RunCommandSource] = (held, context) => Elsewhere(held.Choice(Setting.RunCommandSource), context.Job.Control.RunFrom?.Value, "run commands"),
        [Setting.FrequencyReferenceSource] = (held, context) => Elsewhere(held.Choice(Setting.FrequencyReferenceSource), context.Job.Control.ReferenceFrom?.Value, "the reference"),
    };

    /// <summary>What the value means, in a sentence's rest; null where there is nothing to say.</summary>
    /// <param name="setting">The setting.</param>
    /// <param name="held">Its value with those around it.</param>
    /// <param name="context">The set.</param>
    /// <param name="plan">What the job decides.</param>
    internal static string? Of(Setting setting, SettingSet held, JobContext context, SettingsPlan plan) =>
        (Rules.TryGetValue(setting, out var rule) ? rule(held, context) : null) ?? (plan[setting] is { } planned ? Beyond(planned, held) : null);

    private static string? Elsewhere(string? source, string? asked, string what) =>
        asked is not null && source is not null && !string.Equals(source, asked, StringComparison.Ordinal) ? $"{what} come{(what.EndsWith('s') ? "" : "s")} from {source}, the job says {asked}" : null;

    private static string? Beyond(PlannedSetting planned, SettingSet held) => held.Number(planned.Setting) switch
    {
        { } value when planned.High is { } high && value > high * (1 + Rounding) => $"more than the {SettingText.Number(planned.Setting, high, Digits)} that the job allows",
        { } value when planned.Low is { } low && value < low * (1 - Rounding) => $"less than the {SettingText.Number(planned.Setting, low, Digits)} that the job needs",
        _ => null,
    };
}
