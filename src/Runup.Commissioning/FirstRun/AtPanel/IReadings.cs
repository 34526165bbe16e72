using Runup.Profiles;

namespace Runup.Commissioning.FirstRun.AtPanel;

/// <summary>Where the readings come from while a person runs the motor: typed in, or read over a link.</summary>
internal interface IReadings
{
    /// <summary>At standstill.</summary>
    Task<StepEnding> AtStandstill(FirstRunStep step, CancellationToken cancellation);

    /// <summary>At steady running; the step's ending where it can't go on, else null.</summary>
    Task<StepEnding?> At(FirstRunStep step, double frequencyHz, Rotation rotation, Coupling coupling, CancellationToken cancellation);

    /// <summary>Of a run straight up and the stop from there.</summary>
    Task<StepEnding> OfRamps(FirstRunStep.Ramps step, CancellationToken cancellation);

    /// <summary>That the shaft stands again; why not, or null.</summary>
    Task<string?> WhyNotStanding(FirstRunStep step, CancellationToken cancellation);

    /// <summary>That what was set for the run is as entered again.</summary>
    Task<StepEnding> AsEntered(CancellationToken cancellation);
}
