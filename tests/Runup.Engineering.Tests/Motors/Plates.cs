using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Motors;

/// <summary>Plates for tests.</summary>
internal static class Plates
{
    /// <summary>An invented pump motor; its values agree within the printed digits.</summary>
    internal static Nameplate Pump { get; } = new()
    {
        Output = ShaftPower.FromWatts(7500),
        Voltage = LineVoltage.FromVolts(400),
        Current = LineCurrent.FromAmperes(14.4),
        Frequency = ElectricalFrequency.FromHertz(50),
        Speed = ShaftSpeed.FromRpm(1460),
        PrintedPoles = PoleCount.FromPoles(4),
        PowerFactor = PowerFactor.FromRatio(0.83),
        Efficiency = Efficiency.FromRatio(0.904),
        EfficiencyClass = "IE3",
        Rounding = new PlateRounding
        {
            OutputWatts = 50,
            VoltageVolts = 0.5,
            CurrentAmperes = 0.05,
            SpeedRadiansPerSecond = 0.05,
            PowerFactor = 0.005,
            Efficiency = 0.0005,
        },
    };
}
