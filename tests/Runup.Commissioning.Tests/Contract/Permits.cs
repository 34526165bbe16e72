using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Tests.Bench;
using Runup.Profiles;

namespace Runup.Commissioning.Tests.Contract;

/// <summary>Permits for the bench, by the way that the first run takes.</summary>
internal static class Permits
{
    internal static async Task<RunPermit> For(RunHold hold, Rotation rotation, TimeProvider time, double limitHz = 5)
    {
        var step = new FirstRunStep.Signals("bench", "bench", [new ToConfirm("bench", "It is a bench.", "bench")]);
        var (checks, _) = await StepChecks.Confirm(step, BenchSite.Tag, new BenchPerson(time), new BenchRecords(), default);
        var proof = BusLossProof.Judge(TimeSpan.FromSeconds(0.5), null);
        return RunPermit.ForStep(checks!, proof!, hold, new RunLimits(5, 50, ReversePermitted: true), limitHz, rotation);
    }
}
