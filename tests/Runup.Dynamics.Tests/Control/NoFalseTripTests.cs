using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;
using Runup.Settings;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

/// <summary>What watches the output trips no drive whose conductors, motor and load are sound, whatever it is told.</summary>
public sealed class NoFalseTripTests
{
    private static readonly TripCause[] Watched = [TripCause.MotorPhase, TripCause.EarthFault, TripCause.ShortCircuit, TripCause.Overspeed];

    public static Arbitrary<Set> Sets() => (
        from kilowatts in Gen.Choose(0, 1000).Select(part => 0.37 * Math.Pow(90 / 0.37, part / 1000.0))
        from load in Gen.Elements(0, 0, 0.1, 0.5, 0.9)
        from inertia in Gen.Choose(0, 10)
        from control in Gen.Elements("vf", "vf", "sensorless-vector", "encoder-vector")
        from quadratic in Gen.Elements(false, true)
        from braking in Gen.Elements("ramp", "dc-braking", "coast")
        from flying in Gen.Elements("on", "off")
        from skew in Gen.Elements(0, 0, 1, 0.75, 1.3)
        from watched in Gen.Elements(true, false)
        from orders in Gen.Choose(-100, 100).ArrayOf(5)
        select new Set(kilowatts, load, inertia, control, quadratic, braking, flying, skew, watched, orders)).ToArbitrary();

    [Property(MaxTest = 25, Arbitrary = [typeof(NoFalseTripTests)])]
    public void Starts_stops_reversals_light_loads_and_direct_current_trip_nothing(Set set)
    {
        var drive = set.Drive();
        foreach (var order in set.Orders)
        {
            drive.Order = order == 0 ? default : Forward(0.6 * order);
            for (var i = 0; i < 2500; i++)
            {
                drive.Tick();
                drive.Readings.Trip.ShouldNotBeOneOf(Watched);
            }

            drive.Order = Stop(order % 3 == 0 ? StopKind.QuickStop : StopKind.ByMethod);
            for (var i = 0; i < 1500; i++)
            {
                drive.Tick();
                drive.Readings.Trip.ShouldNotBeOneOf(Watched);
            }

            drive.ResetTrip();
        }
    }

    public sealed record Set(double Kilowatts, double Load, int Inertia, string Control, bool Quadratic, string Braking, string Flying, double Skew, bool Watched, int[] Orders)
    {
        public override string ToString() => $"{Kilowatts:0.00} kW, load {Load}, inertia {Inertia}, {Control}, quadratic {Quadratic}, {Braking}, flying {Flying}, resistances times {Skew}, watched {Watched}, {string.Join(" ", Orders)}";

        internal DriveSimulation Drive()
        {
            var powerW = 1000 * Kilowatts;
            var currentA = 2.6 * Math.Pow(Kilowatts, 0.95);
            var slip = 0.06 * Math.Pow(Kilowatts, -0.35);
            var motor = ((CircuitFit.Fitted)CircuitFit.Of(new Nameplate
            {
                Output = ShaftPower.FromWatts(powerW),
                Voltage = LineVoltage.FromVolts(400),
                Current = LineCurrent.FromAmperes(currentA),
                Frequency = ElectricalFrequency.FromHertz(50),
                Speed = ShaftSpeed.FromRpm(1500 * (1 - slip)),
                PowerFactor = PowerFactor.FromRatio(0.8),
            })).Circuit;
            var rotor = 0.0025 * Math.Pow(Kilowatts, 1.25);
            var ratedNm = powerW / (2 * Math.PI * 25 * (1 - slip));
            var size = Examples.Drive with
            {
                NominalPower = ShaftPower.FromWatts(powerW),
                Overloads = [new("normal", LineCurrent.FromAmperes(1.15 * currentA), Fraction.FromRatio(1.1), Seconds(60), Seconds(600))],
                PeakCurrent = LineCurrent.FromAmperes(1.8 * currentA),
                OvercurrentTrip = LineCurrent.FromAmperes(2.4 * currentA),
                BusCapacitance = Capacitance.FromFarads(72e-6 * Kilowatts),
            };
            var system = PumpSet with
            {
                Motor = motor,
                Drive = size,
                SupplyEarthed = false,
                Machine = new DrivenMachine
                {
                    Load = Quadratic
                        ? new LoadCurve.Quadratic(Torque.FromNewtonMetres(Load * ratedNm), ShaftSpeed.FromRpm(1500))
                        : new LoadCurve.Constant(Torque.FromNewtonMetres(Load * ratedNm)),
                    MachineInertia = Quantities.Inertia.FromKilogramSquareMetres(Inertia * rotor),
                    MotorInertia = Quantities.Inertia.FromKilogramSquareMetres(rotor),
                },
            };
            var settings = MotorSettings
                .With(Setting.MotorRatedPower, powerW).With(Setting.MotorRatedCurrent, currentA).With(Setting.MotorRatedSpeed, 1500 * (1 - slip) * Math.PI / 30).With(Setting.MotorPowerFactor, 0.8)
                .With(Setting.MaximumFrequency, 60).With(Setting.AccelerationTime, 1.5).With(Setting.DecelerationTime, 1.5).With(Setting.PermittedDirection, "both")
                .With(Setting.ControlMethod, Control).With(Setting.StoppingMethod, Braking).With(Setting.FlyingRestart, Flying);
            var truth = TunedMotor.Of(motor);
            var believed = truth with { StatorResistance = Resistance.FromOhms(Skew * truth.StatorResistance.Ohms), RotorResistance = Resistance.FromOhms(Skew * truth.RotorResistance.Ohms) };
            return new DriveSimulation(system, ControlSettings.From(settings, size) with { Tuned = Skew > 0 ? believed : null })
            {
                // On a supply without earth it carries no current: the motor is sound, and each phase is looked at.
                Fault = Watched ? new OutputFault.ToEarth(OutputPhase.U, default) : null,
            };
        }
    }
}
