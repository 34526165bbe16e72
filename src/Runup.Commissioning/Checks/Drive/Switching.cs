namespace Runup.Commissioning.Checks.Drive;

/// <summary>Switching frequency.</summary>
internal sealed class Switching() : Check("drive.switching-frequency", Stage.Coupled)
{
    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var points = context.Rating.SwitchingDerating;
        if (context.Job.Drive.SwitchingFrequency?.Value is not { } switching || points.Count == 0)
        {
            return Fine($"the one at which the drive has its full current, {Said.Number(context.Conditions.Switching.Hertz / 1000)} kHz");
        }

        var factor = (context.Conditions.Derated as Engineering.Drives.DeratedCurrent.Permitted)?.Switching.Ratio ?? 1;
        var forbidden = switching.Hertz > points[^1].Frequency.Hertz;
        if (!forbidden && factor >= 1)
        {
            return Fine($"{Said.Number(switching.Hertz / 1000)} kHz with full current");
        }

        return new CheckResult.Violated(Id, forbidden ? Severity.Blocker : Severity.Note, Blocks, new Basis.MakersData("current against switching frequency"))
        {
            Title = forbidden ? "Switching frequency beyond the drive's" : "Switching frequency costs current",
            Explanation = forbidden
                ? $"{Said.Number(switching.Hertz / 1000)} kHz is beyond the drive's {Said.Number(points[^1].Frequency.Hertz / 1000)} kHz."
                : $"At {Said.Number(switching.Hertz / 1000)} kHz the drive has {Said.Percent(factor)} of its current.",
            Remedy = "A lower switching frequency unless the motor's whine forbids it.",
            Value = switching.Hertz / 1000,
            Limit = (forbidden ? points[^1].Frequency.Hertz : points.Last(point => point.Current.Ratio >= 1 || point == points[0]).Frequency.Hertz) / 1000,
            Unit = "kHz",
        };
    }
}
