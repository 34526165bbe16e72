using Runup.Commissioning.Survey;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Bench;

/// <summary>The survey of the set on the bench.</summary>
internal static class BenchJob
{
    internal static Job Of(LoadKind load = LoadKind.Quadratic, MotorKind kind = MotorKind.Induction) => new()
    {
        Tag = BenchSite.Tag,
        Supply = new() { Voltage = new(LineVoltage.FromVolts(400)), Frequency = new(ElectricalFrequency.FromHertz(50)) },
        Motor = new()
        {
            Kind = new(kind),
            Plate = new()
            {
                Output = new(ShaftPower.FromWatts(7457)),
                Voltage = new(LineVoltage.FromVolts(400)),
                Current = new(LineCurrent.FromAmperes(14.4)),
                Frequency = new(ElectricalFrequency.FromHertz(50)),
                Speed = new(ShaftSpeed.FromRpm(1460)),
            },
        },
        Drive = new() { Profile = new("bench"), Size = new("7.5") },
        Cable = new(),
        Machine = new() { Load = new(load), Torque = new(Torque.FromNewtonMetres(40)), AtSpeed = new(ShaftSpeed.FromRpm(1460)) },
        Operation = new() { MaximumFrequency = new(ElectricalFrequency.FromHertz(50)) },
        Control = new(),
        Bus = new(),
        Place = new(),
    };
}
