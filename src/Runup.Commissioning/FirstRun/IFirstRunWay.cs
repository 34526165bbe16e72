namespace Runup.Commissioning.FirstRun;

/// <summary>How the steps of a first run are done: by Runup over a link while a person holds, or by a person at the machine.</summary>
internal interface IFirstRunWay
{
    /// <summary>Asked before a step begins: why it is left out; null where it is done.</summary>
    Task<string?> LeavesOut(FirstRunStep step, CancellationToken cancellation);

    /// <summary>Does a step whose checks were confirmed.</summary>
    Task<StepEnding> Do(FirstRunStep step, StepChecks checks, CancellationToken cancellation);
}
