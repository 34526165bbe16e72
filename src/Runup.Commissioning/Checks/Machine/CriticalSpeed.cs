using Runup.Commissioning.Plan;

namespace Runup.Commissioning.Checks.Machine;

/// <summary>Speeds at which the machine shakes, against the range in which it is run.</summary>
internal sealed class CriticalSpeed() : Check("machine.critical-speed", Stage.Coupled)
{
    private static readonly Basis Named = new Basis.JobData("machine.critical-speeds");

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (context.Job.Machine.CriticalSpeeds is not { } speeds)
        {
            return Unknown("critical speeds of the machine (machine.critical-speeds, or none): its maker names them, or a slow run-up shows them", "which frequencies are left out");
        }

        if (speeds.Count == 0)
        {
            return Fine("the machine has no critical speed");
        }

        if (context.Meant.Nameplate is null)
        {
            return Unknown(JobCheck.NoCircuit(context), "which frequencies are left out");
        }

        var bands = SkippedBand.InRange(context);
        var highest_Hz = context.Job.Operation.MaximumFrequency.Value.Hertz;
        return bands.Count == 0 ? Fine("no critical speed lies in the range of frequencies")
            : bands.FirstOrDefault(band => band.Touches(highest_Hz, highest_Hz)) is { } atEnd ? AtTheHighest(atEnd, highest_Hz)
            : bands.Count > SkippedBands.Room ? TooMany(bands.Count)
            : LeftOut(bands);
    }

    private static string Text(SkippedBand band) => $"{Said.Number(band.Speed.Rpm, 4)} rpm at {Said.Number(band.Centre.Hertz)} Hz";

    private CheckResult.Violated AtTheHighest(SkippedBand band, double highest_Hz) => new(Id, Severity.Caution, Blocks, Named)
    {
        Title = "The highest frequency is a critical speed",
        Explanation = $"The machine shakes about {Text(band)}, a band {Said.Number(band.Width.Hertz, 2)} Hz wide, and {Said.Number(highest_Hz)} Hz lies in it: that is where it would run for hours.",
        Remedy = "A maximum frequency beside the band; the drive leaves out what lies between, not its end.",
        Value = highest_Hz,
        Limit = band.Centre.Hertz,
        Unit = "Hz",
    };

    private CheckResult.Violated TooMany(int count) => new(Id, Severity.Caution, Blocks, Named)
    {
        Title = "More critical speeds than there are bands to leave out",
        Explanation = $"{count} critical speeds lie in the range of frequencies, and the settings leave out {SkippedBands.Room}.",
        Remedy = "Let wider bands cover two of them, or a narrower range of frequencies.",
        Value = count,
        Limit = SkippedBands.Room,
        Unit = "1",
    };

    private CheckResult.Violated LeftOut(IReadOnlyList<SkippedBand> bands) => new(Id, Severity.Note, Blocks, Named)
    {
        Title = "Critical speeds are left out",
        Explanation = $"The machine shakes about {Said.List([.. bands.Select(Text)])}: the settings leave these frequencies out, and the ramps pass through them.",
        Remedy = "Pass them at the first run-up while vibration is measured at the bearings, with nobody inside the guards, and set the bands by what is measured.",
    };
}
