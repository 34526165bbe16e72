using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

/// <summary>A motor without load on the voltage curve, whose rotor would swing against the field at mid frequencies.</summary>
public sealed class SwingDampingTests
{
    [Theory]
    [MemberData(nameof(SizesTests.Motors), MemberType = typeof(SizesTests))]
    public void Without_load_the_current_of_every_size_stands_still_at_every_frequency(double powerW, double currentA, double rpm, double powerFactor, double inertia)
    {
        var (system, settings) = Alone(powerW, currentA, rpm, powerFactor, inertia);
        foreach (var hertz in new[] { 6.0, 10, 12.5, 15, 17.5, 20, 22.5, 25, 27.5, 30, 40, 50 })
        {
            SwingA(system, settings, hertz).ShouldBeLessThan(0.02 * currentA, $"{hertz} Hz");
        }
    }

    [Theory]
    [InlineData(75_000, 135, 1484, 0.87, 0.8, 20)]
    [InlineData(22_000, 41, 1470, 0.85, 0.15, 22.5)]
    public void Undamped_it_hunts(double powerW, double currentA, double rpm, double powerFactor, double inertia, double hertz)
    {
        var (system, settings) = Alone(powerW, currentA, rpm, powerFactor, inertia);

        SwingA(system, settings with { SwingDamping = default }, hertz).ShouldBeGreaterThan(0.2 * currentA);
    }

    [Fact]
    public void The_frequency_that_is_shown_and_the_steady_speed_stay_what_they_are()
    {
        var damped = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(30) }.Run(10);
        var plain = new DriveSimulation(PumpSet, ByPlate with { SwingDamping = default }) { Order = Forward(30) }.Run(10);

        damped.OutputFrequencyHz.ShouldBe(30);
        damped.SpeedRpm.ShouldBe(plain.SpeedRpm, 0.01);
        damped.OutputCurrentA.ShouldBe(plain.OutputCurrentA, 0.001);
    }

    private static (DriveSystem System, ControlSettings Settings) Alone(double powerW, double currentA, double rpm, double powerFactor, double inertia)
    {
        var (system, settings) = SizesTests.Set(powerW, currentA, rpm, powerFactor, inertia);
        return (system with { Machine = system.Machine with { MachineInertia = Inertia.FromKilogramSquareMetres(0) } }, settings);
    }

    private static double SwingA(DriveSystem system, ControlSettings settings, double hertz)
    {
        var drive = new DriveSimulation(system, settings) { Order = Forward(hertz) };
        drive.Run(9);
        var currents = Enumerable.Range(0, 1000).Select(_ => drive.Run(DriveSimulation.TickSeconds).OutputCurrentA).ToList();
        return currents.Max() - currents.Min();
    }
}
