using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Runup.Dynamics;

namespace Runup.Bench.Engine;

/// <summary>The drive of case (b) or (c) by BenchmarkDotNet: spread of a simulated second at speed, and what it allocates (nothing).</summary>
/// <remarks>Within this process, so that nothing is generated and built beside it.</remarks>
[MemoryDiagnoser]
public class Statistics
{
    private const int Second = 1000;

    private DriveSimulation drive = null!;

    /// <summary>Which case.</summary>
    [Params("b", "c")]
    public string Case { get; set; } = "b";

    /// <summary>A drive that has come to speed.</summary>
    [GlobalSetup]
    public void ComeToSpeed()
    {
        drive = (Case == "b" ? DriveCase.B : DriveCase.C).NewDrive();
        ASecond();
        ASecond();
    }

    /// <summary>A thousand ticks.</summary>
    [Benchmark]
    public void ASecond()
    {
        for (var tick = 0; tick < Second; tick++)
        {
            drive.Tick();
        }
    }

    internal static void Run() =>
        BenchmarkRunner.Run<Statistics>(DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance)).WithArtifactsPath("artifacts/bench-engine/statistics"));
}
