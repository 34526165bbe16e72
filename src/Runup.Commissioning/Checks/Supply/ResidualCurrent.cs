using Runup.Commissioning.Survey;

namespace Runup.Commissioning.Checks.Supply;

/// <summary>The type and rating of a residual-current device upstream, against what a drive's rectifier and filter send through it.</summary>
/// <remarks>
/// A bridge on three phases can feed a smooth direct current into an earth fault, which only type B sees; behind a single phase the
/// drive's manual decides between A, F and B. A filter in the drive leaks 20 to 100 mA standing (common practice, no source).
/// </remarks>
internal sealed class ResidualCurrent() : Check("supply.residual-current", Stage.Entry)
{
    private const double LargestOfPersons = 0.030;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var supply = context.Job.Supply;
        if (supply.ResidualCurrentDevice is not { } device)
        {
            return Fine("no residual-current device is named upstream");
        }

        if (device.Type?.Value is not { } type)
        {
            return Unknown("the type of the residual-current device: AC, A, F or B (supply.residual-current-device.type)", "whether it sees the fault currents that a drive can make");
        }

        var seesSmooth = type.StartsWith('B');
        var phases = supply.Phases?.Value ?? 3;
        if (!seesSmooth && (phases == 3 || type is "AC"))
        {
            return Blind(type, phases);
        }

        if (device.Rating.Value.Amperes <= LargestOfPersons && supply.Filter?.Value == true)
        {
            return Leaking(device);
        }

        return seesSmooth
            ? Fine($"type {type}, {Said.Number(1000 * device.Rating.Value.Amperes)} mA")
            : Unknown($"which type the drive's manual asks for behind a single phase; type {type} is fitted", "whether it sees the fault currents that this drive can make");
    }

    private CheckResult.Violated Blind(string type, int phases) => new(Id, Severity.Caution, Blocks, phases == 3
        ? new Basis.Physics("a bridge on three phases can feed a smooth direct current into an earth fault")
        : new Basis.Standard("IEC 60755, types of residual-current devices", Recalled: true))
    {
        Title = "Residual-current device of a type that a drive can blind",
        Explanation = phases == 3
            ? $"An earth fault behind a three-phase drive can be a smooth direct current: type {type} does not see it, and may be kept from seeing others."
            : $"Type {type} sees sinusoidal fault currents alone; behind a rectifier they are pulsed.",
        Remedy = phases == 3
            ? "A device of type B, or another means of protection: whoever designed the installation decides, by the drive's manual and the local code."
            : "A device of the type that the drive's manual names: whoever designed the installation decides, by the local code.",
    };

    private CheckResult.Violated Leaking(ResidualCurrentDeviceSurvey device) => new(Id, Severity.Caution, Blocks, new Basis.CommonPractice("a filter in a drive leaks 20 to 100 mA standing"))
    {
        Title = "Residual-current device that the filter's leakage may trip",
        Explanation = $"The drive's radio-interference filter leaks more than a device of {Said.Number(1000 * device.Rating.Value.Amperes)} mA may stand: it trips when the drive is switched on or runs.",
        Remedy = "One device for each drive, of a rating that the designer of the installation chooses; a filter of low leakage; a shorter cable; or an isolating transformer. Never a larger rating as the first cure where people are protected by it.",
        Value = 1000 * device.Rating.Value.Amperes,
        Unit = "mA",
    };
}
