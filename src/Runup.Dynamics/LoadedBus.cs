using Runup.Dynamics.Plant;
using Runup.Quantities;

namespace Runup.Dynamics;

/// <summary>The DC bus of a drive that runs steadily, by the same rectifier and losses as the simulation's.</summary>
public static class LoadedBus
{
    /// <summary>Mean bus voltage while the motor takes a power at a current.</summary>
    /// <exception cref="ArgumentNullException">There is no system.</exception>
    public static DcVoltage Of(DriveSystem system, ElectricalPower motorInput, LineCurrent current)
    {
        ArgumentNullException.ThrowIfNull(system);
        var figures = new DriveFigures(system);
        var rectifier = figures.Rectifier;
        var own = figures.OwnConductance * rectifier.PeakV * rectifier.PeakV;
        return DcVoltage.FromVolts(rectifier.VoltageAt(Math.Max(0, motorInput.Watts + (figures.InverterLossWPerA * current.Amperes) + own)));
    }
}
