using Runup.Commissioning.Checks;
using Runup.Settings;

namespace Runup.Commissioning.Comparison;

/// <summary>Currents of protection and limit against the plate, the load and the start.</summary>
internal static class CurrentConsequences
{
    private const double Rounding = 0.01;

    internal static string? OfOverload(SettingSet held, JobContext context)
    {
        var plate_A = context.Printed.RatedCurrent.Amperes;
        return held.Number(Setting.MotorOverloadCurrent) switch
        {
            { } set_A when set_A > plate_A * (1 + Rounding) => $"lets {Said.Percent(set_A / plate_A)} of the plate's {Said.Number(plate_A)} A flow without end",
            { } set_A when Load_A(context) is { } load_A && set_A < load_A * (1 - Rounding) => $"trips while running: the load takes {Said.Number(load_A)} A",
            _ => null,
        };
    }

    internal static string? OfLimit(SettingSet held, JobContext context) => held.Number(Setting.CurrentLimit) switch
    {
        { } set_A when context.Meant.Boost?.Current is { } start && set_A < context.MotorCount * start.Amperes * (1 - Rounding) =>
            $"less than the {Said.Number(context.MotorCount * start.Amperes)} A that breaking away needs",
        { } set_A when Load_A(context) is { } load_A && set_A < load_A * (1 - Rounding) => $"does not carry the load, which takes {Said.Number(load_A)} A",
        _ => null,
    };

    private static double? Load_A(JobContext context) => context.MotorCount * context.Meant.Motion?.Steady?.Current.Amperes;
}
