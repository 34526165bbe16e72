using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests;

public sealed class DriveSimulationTests
{
    [Fact]
    public void Runs_up_to_the_frequency_asked_for_and_back_to_standstill()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(50) };

        var running = drive.Run(7);
        drive.Order = Stop();
        var stopped = drive.Run(7);

        running.OutputFrequencyHz.ShouldBe(50);
        running.SpeedRpm.ShouldBe(1467, 5);
        running.State.ShouldBe(DriveState.Running);
        stopped.State.ShouldBe(DriveState.Stopped);
        stopped.SpeedRpm.ShouldBe(0);
        stopped.OutputCurrentA.ShouldBe(0);
    }
}
