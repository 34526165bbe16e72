using Runup.Commissioning.Survey;
using Runup.Engineering.Drives;

namespace Runup.Commissioning.Checks;

/// <summary>A job with everything that several checks need, computed once.</summary>
public sealed class JobContext
{
    private JobContext(Job job, DriveRating rating)
    {
        (Job, Rating) = (job, rating);
        Plate = PlateContext.For(job);
    }

    /// <summary>The job as surveyed.</summary>
    public Job Job { get; }

    /// <summary>The motor's plate.</summary>
    public PlateContext Plate { get; }

    /// <summary>The drive's size with the job's overrides.</summary>
    public DriveRating Rating { get; }

    /// <summary>The context of a job on a size of a drive.</summary>
    /// <param name="job">The job.</param>
    /// <param name="size">The size's rating from its profile; the job's overrides are laid over it.</param>
    public static JobContext For(Job job, DriveRating size) => new(job, size);
}
