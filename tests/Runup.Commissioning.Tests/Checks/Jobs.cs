using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Engineering.Drives;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>Invented jobs, as surveyed.</summary>
internal static class Jobs
{
    /// <summary>A seawater pump of 7.5 kW on a drive of 17 A, all known and all well.</summary>
    internal static Job Pump() => new()
    {
        Tag = "SWP-101",
        Supply = new()
        {
            Voltage = new(LineVoltage.FromVolts(400)),
            Frequency = new(ElectricalFrequency.FromHertz(50)),
            Phases = new(3),
        },
        Motor = new()
        {
            Plate = Plates.Of("7.5 kW", 400, 14.4, 50, 1460, 4, 0.83, 90.4, WindingConnection.Delta, 1.0, "IE3") with
            {
                OtherRatings = [Plates.Other(690, WindingConnection.Star, 8.3)],
                LockedRotorCurrent = new(Ratio.FromValue(7.2)),
                LockedRotorTorque = new(Ratio.FromValue(2.3)),
                BreakdownTorque = new(Ratio.FromValue(2.9)),
                Cooling = new("IC411"),
            },
            Inertia = new(Inertia.FromKilogramSquareMetres(0.035)),
            ThermalSensor = new("ptc"),
            Brake = new(false),
        },
        Drive = new() { Profile = new("tern"), Size = new("7.5-400"), OverloadCycle = new("normal"), SwitchingFrequency = new(SwitchingFrequency.FromHertz(4000)) },
        Cable = new(),
        Machine = new()
        {
            Load = new(LoadKind.Quadratic),
            Torque = new(Torque.FromNewtonMetres(42)),
            AtSpeed = new(ShaftSpeed.FromRpm(1460)),
            BreakawayTorque = new(Torque.FromNewtonMetres(8)),
            Inertia = new(Inertia.FromKilogramSquareMetres(0.12)),
            LargestSpeed = new(ShaftSpeed.FromRpm(1800)),
            CriticalSpeeds = [],
        },
        Operation = new()
        {
            MinimumFrequency = new(ElectricalFrequency.FromHertz(20)),
            MaximumFrequency = new(ElectricalFrequency.FromHertz(50)),
            Acceleration = new(Duration.FromSeconds(8)),
            Deceleration = new(Duration.FromSeconds(12)),
            Directions = new("forward"),
            StopsPerHour = new(Ratio.FromValue(2)),
            RestartAfterPowerLoss = new(false),
        },
        Control = new() { RunFrom = new("bus"), RunContact = new("maintained"), ReferenceFrom = new("bus") },
        Bus = new() { Kind = new("modbus-tcp"), Address = new(1), TimeOut = new(Duration.FromSeconds(2)), OnLoss = new("ramp") },
        Place = new() { Ambient = new(Temperature.FromCelsius(30)), Altitude = new(Length.FromMetres(5)), ExplosiveZone = new("none") },
    };

    /// <summary>A feed screw: constant torque through a gear, breakaway above running torque, heavy rating.</summary>
    internal static Job Screw() => Pump() with
    {
        Tag = "FSC-301",
        Motor = new()
        {
            Plate = Plates.Of("1.5 kW", 400, 3.45, 50, 1440, 4, 0.74, 85.3, WindingConnection.Star) with { Cooling = new("IC411") },
            Inertia = new(Inertia.FromKilogramSquareMetres(0.0048)),
        },
        Drive = new() { Profile = new("tern"), Size = new("2.2-400"), OverloadCycle = new("heavy"), SwitchingFrequency = new(SwitchingFrequency.FromHertz(4000)) },
        Machine = new()
        {
            Load = new(LoadKind.Constant),
            Torque = new(Torque.FromNewtonMetres(150)),
            BreakawayTorque = new(Torque.FromNewtonMetres(210)),
            Inertia = new(Inertia.FromKilogramSquareMetres(0.9)),
            GearRatio = new(Ratio.FromValue(20)),
            GearEfficiency = new(Efficiency.FromRatio(0.94)),
            LargestSpeed = new(ShaftSpeed.FromRpm(80)),
        },
        Operation = Pump().Operation with { MinimumFrequency = new(ElectricalFrequency.FromHertz(25)), Acceleration = new(Duration.FromSeconds(3)), Deceleration = new(Duration.FromSeconds(3)) },
    };

    /// <summary>A hoist with brake and braking resistor.</summary>
    internal static Job Hoist() => Pump() with
    {
        Tag = "HST-501",
        Motor = Pump().Motor with { Brake = new(true) },
        Drive = Pump().Drive with { OverloadCycle = new("heavy"), BrakingResistor = new(new(Resistance.FromOhms(60)), new(ElectricalPower.FromWatts(2000))), Size = new("11-400") },
        Machine = new()
        {
            Load = new(LoadKind.Hoisting),
            Mass = new(Mass.FromKilograms(1000)),
            DrumDiameter = new(Length.FromMetres(0.3)),
            GearRatio = new(Ratio.FromValue(40)),
            GearEfficiency = new(Efficiency.FromRatio(0.9)),
        },
    };

    internal static JobContext Context(this Job job, double kW = 7.5) => JobContext.For(job, Ratings.Of(kW));

    internal static JobContext Context(this Job job, DriveRating rating) => JobContext.For(job, rating);

    internal static CheckReport Judge(this Job job, double kW = 7.5) => CheckList.Judge(job.Context(kW));

    internal static CheckResult Of(this CheckReport report, string id) => report.Results.Single(result => result.Id == id);

    internal static Job With(this Job job, Func<PlateSurvey, PlateSurvey> change) => job with { Motor = job.Motor with { Plate = change(job.Motor.Plate) } };

    internal static Job With(this Job job, Func<MachineSurvey, MachineSurvey> change) => job with { Machine = change(job.Machine) };

    internal static Job With(this Job job, Func<OperationSurvey, OperationSurvey> change) => job with { Operation = change(job.Operation) };

    internal static Job With(this Job job, Func<DriveSurvey, DriveSurvey> change) => job with { Drive = change(job.Drive) };
}
