using System.Globalization;
using Runup.Dynamics;
using Runup.Dynamics.Batch;
using Runup.Dynamics.Control;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Engineering.Drives;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Bench.Engine;

/// <summary>Cases (b) and (c): the motor of case (a) on a drive, sampled control and DC bus, start at the current limit and stop; drive.c holds the same equations, smooth.h the control as equations.</summary>
internal sealed class DriveCase
{
    private const int Ticks = 3600;
    private const int StopTick = 2600;
    private const double SlipShare = 0.5;

    private static readonly DriveRating Rating = new()
    {
        NominalPower = ShaftPower.FromWatts(37_000),
        SupplyVoltage = (LineVoltage.FromVolts(380), LineVoltage.FromVolts(480)),
        SupplyPhases = 3,
        Overloads = [new("normal", LineCurrent.FromAmperes(72), Fraction.FromRatio(1.5), Duration.FromSeconds(60), Duration.FromSeconds(600))],
        PeakCurrent = LineCurrent.FromAmperes(140),
        PeakTime = Duration.FromSeconds(2),
        OvercurrentTrip = LineCurrent.FromAmperes(180),
        BusCapacitance = Capacitance.FromFarads(1.5e-3),
        DcChoke = Fraction.FromPercent(3),
        OvervoltageTrip = DcVoltage.FromVolts(840),
        OvervoltageControl = DcVoltage.FromVolts(780),
        ChopperLevel = DcVoltage.FromVolts(780),
        UndervoltageTrip = DcVoltage.FromVolts(380),
        SwitchingDerating = [(SwitchingFrequency.FromHertz(4000), Fraction.FromRatio(1))],
        AmbientDerating = new(Temperature.FromCelsius(40), 0.015, Temperature.FromCelsius(50)),
        AltitudeDerating = new(Length.FromMetres(1000), 0.0001, Length.FromMetres(4000)),
    };

    private readonly bool chopper;
    private readonly DriveSystem system;
    private readonly ControlSettings settings;

    private DriveCase(bool chopper)
    {
        this.chopper = chopper;
        system = new DriveSystem
        {
            Motor = RampCase.Motor,
            Machine = RampCase.Machine,
            Drive = Rating,
            SupplyVoltage = LineVoltage.FromVolts(460),
            SupplyFrequency = ElectricalFrequency.FromHertz(60),
            SupplyReactance = chopper ? Reactance.FromOhms(0.02) : Reactance.FromOhms(0.08),
            BrakingResistor = chopper ? Resistance.FromOhms(12) : null,
        };
        settings = ControlSettings.From(SettingSet.Empty, Rating) with
        {
            MotorRatedPower = ShaftPower.FromWatts(37_300),
            MotorRatedVoltage = LineVoltage.FromVolts(460),
            MotorRatedCurrent = LineCurrent.FromAmperes(60),
            MotorRatedFrequency = ElectricalFrequency.FromHertz(60),
            MotorRatedSpeed = ShaftSpeed.FromRpm(1705),
            MotorPowerFactor = PowerFactor.FromRatio(0.85),
            MotorOverloadCurrent = LineCurrent.FromAmperes(60),
            BaseFrequency = ElectricalFrequency.FromHertz(60),
            MaximumFrequency = ElectricalFrequency.FromHertz(60),
            MaximumOutputVoltage = LineVoltage.FromVolts(460),
            TorqueBoost = Fraction.FromPercent(2),
            Acceleration = Duration.FromSeconds(1.5),
            Deceleration = Duration.FromSeconds(chopper ? 1.5 : 1),
            CurrentLimit = LineCurrent.FromAmperes(90),
            SlipCompensation = Fraction.FromRatio(SlipShare),
            SwingDamping = default,
            OvervoltageControl = !chopper,
            BrakingChopper = chopper,
        };
    }

    internal static DriveCase B { get; } = new(chopper: false);

    internal static DriveCase C { get; } = new(chopper: true);

    /// <summary>The figures of the case for the peer: a name and a number a line.</summary>
    internal IEnumerable<string> Figures()
    {
        var control = new ControlFigures(settings, Rating);
        var drive = new DriveFigures(system);
        var baseOhm = system.SupplyVoltage.Volts / (Math.Sqrt(3) * Rating.Overloads[0].Current.Amperes);
        (string Name, double Value)[] figures =
        [
            ("ticks", Ticks), ("stop_tick", StopTick), ("acceleration", settings.Acceleration.Seconds), ("deceleration", settings.Deceleration.Seconds), ("limit", control.LimitA),
            ("motor_a", control.MotorA), ("slip_hz", control.RatedSlipHz), ("lag", control.RotorLagS), ("clamp_ohm", control.CurrentClampOhm), ("ov_level", control.OvervoltageControlV),
            ("ov_on", chopper ? 0 : 1), ("bus_f", drive.BusF), ("power", settings.MotorRatedPower.Watts), ("cosphi", settings.MotorPowerFactor.Ratio), ("slip_share", SlipShare),
            ("boost_v", settings.TorqueBoost.Ratio * settings.MotorRatedVoltage.Volts), ("most_v", settings.MaximumOutputVoltage.Volts), ("base_hz", settings.BaseFrequency.Hertz),
            ("max_hz", control.MaximumHz), ("line_v", system.SupplyVoltage.Volts), ("choke_ohm", Rating.DcChoke.Ratio * baseOhm), ("supply_ohm", system.SupplyReactance!.Value.Ohms),
            ("loss_per_a", drive.InverterLossWPerA), ("own_g", drive.OwnConductance), ("chopper", chopper ? 1 : 0), ("on_v", drive.ChopperOnV), ("off_v", drive.ChopperOffV),
            ("resistor_g", drive.ResistorConductance),
        ];
        return figures.Select(f => string.Create(CultureInfo.InvariantCulture, $"{f.Name} {f.Value:R}"));
    }

    /// <summary>Points of one run, for comparison: time, speed, current.</summary>
    internal IEnumerable<string> Points()
    {
        var drive = new DriveSimulation(system, settings);
        for (var tick = 1; tick <= Ticks; tick++)
        {
            drive.Order = OrderAt(tick);
            drive.Tick();
            var at = drive.Readings;
            yield return string.Create(CultureInfo.InvariantCulture, $"{at.TimeS:R} {at.SpeedRpm * Math.PI / 30:R} {at.OutputCurrentA:R}");
        }
    }

    /// <summary>What happened in it, to see that the case holds what it is about.</summary>
    internal IEnumerable<string> Shown()
    {
        var drive = new DriveSimulation(system, settings);
        for (var tick = 1; tick <= Ticks; tick++)
        {
            drive.Order = OrderAt(tick);
            drive.Tick();
            if (tick % 100 == 0)
            {
                var at = drive.Readings;
                yield return string.Create(
                    CultureInfo.InvariantCulture,
                    $"{at.TimeS:f1} s {at.OutputFrequencyHz,6:f2} Hz {at.SpeedRpm,7:f1} rpm {at.OutputCurrentA,6:f1} A {at.DcBusV,6:f1} V {at.State} {(at.CurrentLimitActive ? "limit " : "")}{(at.OvervoltageControlActive ? "overvoltage " : "")}{(at.ChopperOn ? "chopper" : "")}");
            }
        }
    }

    /// <summary>Microseconds of one run; a run is set up outside the measurement, as CVODE's memory is.</summary>
    internal double SingleUs() => Timing.MedianUs(
        () => new DriveSimulation(system, settings),
        drive =>
        {
            for (var tick = 1; tick <= Ticks; tick++)
            {
                drive.Order = OrderAt(tick);
                drive.Tick();
            }
        });

    /// <summary>Microseconds a member of a batch on all processors.</summary>
    internal double MemberUs(int members)
    {
        var motors = Enumerable.Range(0, members)
            .Select(i => RampCase.Motor with { RotorResistance = Resistance.FromOhms(0.228 * (0.8 + (0.4 * i / members))) }).ToArray();
        return Timing.MedianUs(
            () => motors.Chunk(Eight.Count).Select(m => new DriveGroup<Eight>(system, settings, m, [RampCase.Machine])).ToArray(),
            groups => Parallel.ForEach(groups, Run),
            rounds: 9) / members / Environment.ProcessorCount;
    }

    /// <summary>Microseconds a member of one group of eight on one processor.</summary>
    internal double LaneUs() =>
        Timing.MedianUs(() => new DriveGroup<Eight>(system, settings, [RampCase.Motor], [RampCase.Machine]), Run) / Eight.Count;

    /// <summary>A drive that has been told to start.</summary>
    internal DriveSimulation NewDrive() => new(system, settings) { Order = OrderAt(1) };

    private static void Run(DriveGroup<Eight> group)
    {
        for (var tick = 1; tick <= Ticks; tick++)
        {
            group.Tick(OrderAt(tick));
        }
    }

    private static DriveOrder OrderAt(int tick) => new(tick < StopTick, 60, StopKind.ByMethod);
}
