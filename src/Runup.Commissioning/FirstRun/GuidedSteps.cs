namespace Runup.Commissioning.FirstRun;

/// <summary>The steps as Runup does them over a link, the motor run only while a person holds.</summary>
internal sealed class GuidedSteps(FirstRunSession session) : IFirstRunWay
{
    public Task<string?> LeavesOut(FirstRunStep step, CancellationToken cancellation) => Task.FromResult<string?>(null);

    public async Task<StepEnding> Do(FirstRunStep step, StepChecks checks, CancellationToken cancellation)
    {
        switch (step)
        {
            case FirstRunStep.Signals:
                session.StopDevice = checks.Notes[FirstRunPlan.StopTested];
                return new StepEnding.Passed();
            case FirstRunStep.Standstill:
                return await StandstillStep.Run(session, step, cancellation);
            case FirstRunStep.SetUp:
                return await SetUpStep.Run(session, cancellation);
            case FirstRunStep.LossProof:
                return await new BusLossTest(session, step, checks).Run(cancellation);
            case FirstRunStep.Couple or FirstRunStep.Watched when session.Task.WhyNotCoupled is { } why:
                return StepEnding.Refused(why);
            case FirstRunStep.Couple:
                return new StepEnding.Passed();
            case FirstRunStep.Watched watched:
                return await WatchedStep.Run(session, watched, cancellation);
            case FirstRunStep.Steady when session.Proof is null:
            case FirstRunStep.Ramps when session.Proof is null:
                return StepEnding.Refused("it is not proved that the drive stops by itself when the bus is lost");
            case FirstRunStep.Steady steady:
                return await SteadyStep.Run(session, steady, checks, session.Proof, cancellation);
            case FirstRunStep.Ramps ramps:
                return await RampsStep.Run(session, ramps, checks, session.Proof, cancellation);
            default:
                throw new InvalidOperationException("The set of steps is closed.");
        }
    }
}
