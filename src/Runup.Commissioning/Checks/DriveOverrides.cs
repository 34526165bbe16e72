using Runup.Commissioning.Survey;
using Runup.Engineering.Drives;

namespace Runup.Commissioning.Checks;

/// <summary>What a job says of its drive in place of the profile.</summary>
internal static class DriveOverrides
{
    internal static DriveRating Apply(DriveSurvey survey, DriveRating size) => size with
    {
        DcChoke = survey.DcChoke?.Value ?? size.DcChoke,
        BusCapacitance = survey.BusCapacitance?.Value ?? size.BusCapacitance,
        OvervoltageTrip = survey.OvervoltageTrip?.Value ?? size.OvervoltageTrip,
        ChopperLevel = survey.ChopperLevel?.Value ?? size.ChopperLevel,
        OutputRiseTime = survey.RiseTime?.Value ?? size.OutputRiseTime,
    };
}
