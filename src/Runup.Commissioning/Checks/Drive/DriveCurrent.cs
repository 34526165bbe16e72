using Runup.Engineering.Drives;

namespace Runup.Commissioning.Checks.Drive;

/// <summary>The drive's continuous current, under its conditions, against the motors' rated current.</summary>
internal sealed class DriveCurrent() : Check("drive.current", Stage.Coupled)
{
    // Half of the last digit of a plate's current counts as enough.
    private const double Rounding = 0.005;

    // The load's current is reckoned from a plate, to some 5 %; a drive that is short by less than that is not shown to carry it.
    private const double Certainty = 1.05;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var continuous = context.Conditions.Continuous.Amperes;
        var needed = context.Meant.RatedCurrent.Amperes;
        if (continuous >= needed * (1 - Rounding))
        {
            return Fine($"{Said.Number(continuous)} A under its conditions against {Said.Number(needed)} A of the motor");
        }

        // A load that needs less than the motor's rated current may well be carried; the motor just can't be used in full.
        var load = context.Meant.Motion?.Steady is { } steady && steady.Frequency.Hertz <= context.Meant.Output.BaseFrequency.Hertz * 1.001
            ? context.MotorCount * steady.Current.Amperes
            : (double?)null;
        var carried = load * Certainty <= continuous;
        return new CheckResult.Violated(Id, carried ? Severity.Caution : Severity.Blocker, Blocks, new Basis.MakersData($"continuous current, {context.Conditions.Cycle.Name} rating, derated"))
        {
            Title = "The drive's current is too small for the motor",
            Explanation = $"The drive has {Said.Number(continuous)} A{Derating(context)}, the motor's plate asks for {Said.Number(needed)} A{Load(load, carried)}.",
            Remedy = carried
                ? "A larger size if the motor is ever to give its full output; else record that the drive limits it."
                : "A larger size, chosen by current and not by power; or lower switching frequency and cooler air if that suffices.",
            Value = continuous,
            Limit = needed,
            Unit = "A",
        };
    }

    private static string Load(double? load, bool carried) => load is not { } amperes ? string.Empty
        : carried ? $"; the load itself takes {Said.Number(amperes)} A"
        : $"; the load itself takes {Said.Number(amperes)} A, as far as a plate tells it to 5 %";

    private static string Derating(JobContext context)
    {
        var cycle = context.Conditions.Cycle;
        if (context.Conditions.Derated is not DeratedCurrent.Permitted permitted)
        {
            return $" of {Said.Number(cycle.Current.Amperes)} A";
        }

        var factors = new List<string>();
        Add("switching", permitted.Switching.Ratio);
        Add("ambient", permitted.Ambient.Ratio);
        Add("altitude", permitted.Altitude.Ratio);
        return factors.Count == 0 ? string.Empty : $" ({Said.Number(cycle.Current.Amperes)} A · {string.Join(" · ", factors)})";

        void Add(string what, double factor)
        {
            if (factor < 1)
            {
                factors.Add($"{Said.Number(factor)} for {what}");
            }
        }
    }
}
