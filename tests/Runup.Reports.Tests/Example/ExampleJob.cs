using Runup.Commissioning.Survey;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Reports.Tests.Example;

/// <summary>The seawater pump of the demo site, as a person wrote it down; invented.</summary>
internal static class ExampleJob
{
    public static Job Pump(string title = "Seawater intake pump 1") => new()
    {
        Tag = "SWP-101",
        Title = title,
        Supply = new()
        {
            Voltage = Of<LineVoltage>("400 V", Provenance.Measured, "398, 400, 401 V between lines"),
            Frequency = Of<ElectricalFrequency>("50 Hz"),
            Phases = new(3),
            Transformer = new(Of<ApparentPower>("630 kVA"), Of<Fraction>("4 %")),
            Unbalance = Of<Fraction>("0.4 %", Provenance.Measured),
            Earthing = new("TN-S"),
            Filter = new(true),
        },
        Motor = new()
        {
            Plate = new()
            {
                Standard = new("IEC"),
                Output = Of<ShaftPower>("7.5 kW", Provenance.Plate),
                Voltage = Of<LineVoltage>("400 V", Provenance.Plate),
                Connection = new(WindingConnection.Delta, Provenance.Measured, Note: "links seen in the terminal box"),
                Current = Of<LineCurrent>("14.4 A", Provenance.Plate),
                Frequency = Of<ElectricalFrequency>("50 Hz", Provenance.Plate),
                Speed = Of<ShaftSpeed>("1460 rpm", Provenance.Plate),
                Poles = new(4),
                PowerFactor = new(PowerFactor.FromRatio(0.83)),
                Efficiency = Of<Efficiency>("90.4 %"),
                EfficiencyClass = new("IE3"),
                InsulationClass = new("F"),
                Cooling = new("IC411"),
                Duty = new("S1"),
                InverterDuty = new(true),
                OtherRatings = [new(Of<LineVoltage>("690 V"), new(WindingConnection.Star), Of<LineCurrent>("8.3 A"), null, null, null)],
            },
            Inertia = Of<Inertia>("0.035 kg·m²", Provenance.Drawing),
            ThermalSensor = new("ptc"),
            Brake = new(false),
            PeakVoltage = new(Of<DcVoltage>("1600 V"), Of<Duration>("0.1 µs")),
        },
        Drive = new() { Profile = new("tern"), Size = new("7.5-400", Provenance.Plate), OverloadCycle = new("normal"), SwitchingFrequency = Of<SwitchingFrequency>("4 kHz") },
        Cable = new()
        {
            Length = Of<Length>("65 m", Provenance.Told, "electrician's estimate along the tray"),
            Section = Of<CrossSection>("10 AWG", Provenance.Plate),
            Conductor = new("copper"),
            Screened = new(true),
            OutputDevice = new("none"),
            OutputSwitch = new(false),
        },
        Machine = new()
        {
            Load = new(LoadKind.Quadratic),
            Torque = Of<Torque>("31 lb·ft", Provenance.Drawing, "duty point of the pump curve, sea water"),
            AtSpeed = Of<ShaftSpeed>("1460 rpm"),
            BreakawayTorque = Of<Torque>("8 N·m", Provenance.Told),
            Inertia = Of<Inertia>("0.12 kg·m²", Provenance.Drawing, "impeller with water"),
            LargestSpeed = Of<ShaftSpeed>("1800 rpm"),
        },
        Operation = new()
        {
            MinimumFrequency = Of<ElectricalFrequency>("20 Hz"),
            MaximumFrequency = Of<ElectricalFrequency>("50 Hz"),
            Acceleration = Of<Duration>("8 s"),
            Deceleration = Of<Duration>("12 s", Provenance.Unstated, "slow, for the non-return valve"),
            Directions = new("forward"),
            RestartAfterPowerLoss = new(false),
        },
        Control = new() { RunFrom = new("bus"), ReferenceFrom = new("bus") },
        Bus = new() { Kind = new("modbus-tcp"), Address = new(1), TimeOut = Of<Duration>("2 s"), OnLoss = new("ramp") },
        Place = new() { Ambient = Of<Temperature>("30 °C", Provenance.Assumed), Altitude = Of<Length>("5 m"), ExplosiveZone = new("none") },
    };

    private static Datum<T> Of<T>(string text, Provenance from = Provenance.Unstated, string? note = null)
        where T : struct, IQuantity<T> => new(QuantityText.Read<T>(text).ShouldBeOfType<Reading<T>.Value>().Quantity, from, Note: note, AsWritten: text);
}
