using Runup.Commissioning.Checks.Plate;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Survey;
using Runup.Engineering;
using Runup.Engineering.Drives;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>A job with everything that several checks and the plan need, each computed once when it is first asked for.</summary>
/// <remarks>
/// Everything is reckoned from the plate as printed. Where the checks of the plate find a slip of the pen, the checks of drive and machine reckon with the plate as it was
/// most likely meant, so that one slip does not raise ten findings, or hide them. Not for several threads at once.
/// </remarks>
public sealed class JobContext
{
    private readonly IReadOnlyList<Assumption> corrections;

    private JobContext(Job job, DriveRating rating)
    {
        (Job, Rating) = (job, rating);
        Plate = PlateContext.For(job);
        Conditions = DriveConditions.Of(job, rating);
        var printed = NameplateReading.Of(Plate);
        Printed = new Reckoning(job, rating, Conditions, printed);
        (var meant, corrections) = MeantPlate.Of(Plate, printed);
        Meant = corrections.Count == 0 ? Printed : new Reckoning(job, rating, Conditions, meant);
    }

    /// <summary>The job as surveyed.</summary>
    public Job Job { get; }

    /// <summary>The drive's size with the job's overrides.</summary>
    public DriveRating Rating { get; }

    /// <summary>The motor's plate with what follows from plate arithmetic alone.</summary>
    public PlateContext Plate { get; }

    /// <summary>Ambient, altitude, switching and overload, and the current left.</summary>
    public DriveConditions Conditions { get; }

    /// <summary>What follows from the plate as printed.</summary>
    public Reckoning Printed { get; }

    /// <summary>What follows from the plate as it was most likely meant; the same where no slip of the pen was found.</summary>
    public Reckoning Meant { get; }

    /// <summary>The plate as printed; null where its figures are not those of something that turns.</summary>
    public Nameplate? Nameplate => Printed.Nameplate;

    /// <summary>The fit of the plate as printed; null for a motor of another kind or an unusable plate.</summary>
    public CircuitFit? Fit => Printed.Fit;

    /// <summary>The circuit of the plate as printed; null where none fits.</summary>
    public EquivalentCircuit? Circuit => Printed.Circuit;

    /// <summary>The driven machine.</summary>
    public MachineReading Machine => Printed.Machine;

    /// <summary>To which voltage and frequency the motor is led, by the plate as printed.</summary>
    public IntendedOutput Output => Printed.Output;

    /// <summary>The current limit that the plan sets.</summary>
    public LineCurrent CurrentLimit => Printed.CurrentLimit;

    /// <summary>Run-up and stop, by the plate as printed; null where motor or machine are not known well enough.</summary>
    public Motion? Motion => Printed.Motion;

    /// <summary>Motors on the drive.</summary>
    public int MotorCount => Printed.MotorCount;

    /// <summary>Everything that was taken because nobody said it.</summary>
    public IReadOnlyList<Assumption> Assumptions => [.. corrections, .. SurveyedAssumptions.Of(Job), .. Conditions.Assumptions, .. Meant.Assumptions];

    /// <summary>The context of a job on a size of a drive.</summary>
    /// <param name="job">The job.</param>
    /// <param name="size">The size's rating from its profile; the job's overrides are laid over it.</param>
    public static JobContext For(Job job, DriveRating size) => new(job, DriveOverrides.Apply(job.Drive, size));
}
