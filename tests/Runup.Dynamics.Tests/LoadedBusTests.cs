using Runup.Engineering.Loads;
using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests;

public sealed class LoadedBusTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(20)]
    [InlineData(45)]
    public void The_bus_under_load_is_the_one_at_which_the_simulation_settles(double loadNm)
    {
        var at = new DriveSimulation(PumpSet with { Machine = Pump with { Load = new LoadCurve.Constant(Torque.FromNewtonMetres(loadNm)), Breakaway = null } }, ByPlate) { Order = Forward(50) }.Run(8);
        var solution = Engineering.Motors.CircuitSolution.AtSpeed(
            Motor, LineVoltage.FromVolts(at.OutputVoltageV), ElectricalFrequency.FromHertz(at.OutputFrequencyHz), ShaftSpeed.FromRpm(at.SpeedRpm));

        LoadedBus.Of(PumpSet, solution.Input, solution.Current).Volts.ShouldBe(at.DcBusV, 0.002 * at.DcBusV);
    }
}
