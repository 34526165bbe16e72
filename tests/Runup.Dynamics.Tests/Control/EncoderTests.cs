using Runup.Engineering.Loads;
using Runup.Quantities;
using Runup.Settings;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

/// <summary>Control of flux and torque by an encoder: it goes on where voltages tell nothing.</summary>
public sealed class EncoderTests
{
    private const double RatedNm = 49;

    private static readonly ControlSettings WithEncoder = ControlSettings.From(MotorSettings.With(Setting.ControlMethod, "encoder-vector").With(Setting.EncoderPulses, 1024), Drive);

    private static readonly ControlSettings Without = ControlSettings.From(MotorSettings.With(Setting.ControlMethod, "sensorless-vector"), Drive);

    // The motor has its flux before it is given the weight.
    private static readonly BrakeSettings OpensOnFlux = new(default, LineCurrent.FromAmperes(4), Seconds(0.5), default);

    [Theory]
    [InlineData(RatedNm)]
    [InlineData(-RatedNm)]
    [InlineData(1.2 * RatedNm)]
    public void It_holds_full_torque_at_standstill(double loadNm)
    {
        var drive = new DriveSimulation(Pulling(loadNm) with { SupplyEarthed = false }, WithEncoder with { Brake = OpensOnFlux })
        {
            Order = Forward(0),

            // Without earth it carries no current; but each phase is looked at.
            Fault = new OutputFault.ToEarth(OutputPhase.U, default),
        };
        drive.Run(1.5);
        var (lowest, highest, turned) = (double.PositiveInfinity, double.NegativeInfinity, 0.0);
        for (var i = 0; i < 5000; i++)
        {
            drive.Tick();
            var at = drive.Readings;
            (lowest, highest) = (Math.Min(lowest, at.SpeedRpm), Math.Max(highest, at.SpeedRpm));
            turned += at.SpeedRpm / 60 * DriveSimulation.TickSeconds;
        }

        drive.Readings.State.ShouldBe(DriveState.Running);
        drive.Readings.TorqueNm.ShouldBe(loadNm, 2.5);
        lowest.ShouldBeGreaterThan(-2);
        highest.ShouldBeLessThan(2);
        turned.ShouldBe(0, 0.02);
    }

    [Fact]
    public void A_weight_that_the_brake_lets_go_is_caught_within_a_part_of_a_turn()
    {
        var drive = new DriveSimulation(Pulling(RatedNm), WithEncoder with { Brake = OpensOnFlux }) { Order = Forward(0) };
        var (turned, furthest) = (0.0, 0.0);
        for (var i = 0; i < 3000; i++)
        {
            drive.Tick();
            turned += drive.Readings.SpeedRpm / 60 * DriveSimulation.TickSeconds;
            furthest = Math.Max(furthest, Math.Abs(turned));
        }

        furthest.ShouldBeInRange(0.01, 0.25);
    }

    [Fact]
    public void Without_an_encoder_the_same_load_runs_away_at_standstill()
    {
        var drive = new DriveSimulation(Pulling(RatedNm), Without with { Brake = OpensOnFlux }) { Order = Forward(0) };
        var fastest = 0.0;
        for (var i = 0; i < 6000; i++)
        {
            drive.Tick();
            fastest = Math.Max(fastest, Math.Abs(drive.Readings.SpeedRpm));
        }

        fastest.ShouldBeGreaterThan(150);
    }

    [Theory]
    [InlineData(0.2, 48)]
    [InlineData(2, 40)]
    [InlineData(25, 48)]
    [InlineData(50, 45)]
    [InlineData(50, 0)]
    [InlineData(-20, 20)]
    public void The_speed_is_the_one_asked_for_within_a_turn_a_minute(double hertz, double loadNm)
    {
        var machine = Pump with { Load = new LoadCurve.Constant(Torque.FromNewtonMetres(loadNm)), Breakaway = null };
        var drive = new DriveSimulation(PumpSet with { Machine = machine }, WithEncoder with { ReversePermitted = true }) { Order = Forward(hertz) };
        drive.Run(8);
        var mean = 0.0;
        for (var i = 0; i < 500; i++)
        {
            drive.Tick();
            mean += drive.Readings.SpeedRpm / 500;
        }

        drive.Readings.State.ShouldBe(DriveState.Running, drive.Readings.Trip.ToString());
        mean.ShouldBe(30 * hertz, 1);
    }

    [Fact]
    public void A_rotor_resistance_that_is_a_third_off_costs_current_but_no_speed()
    {
        var tuned = TunedMotor.Of(Motor);
        var wrong = WithEncoder with { Tuned = tuned with { RotorResistance = Resistance.FromOhms(1.33 * tuned.RotorResistance.Ohms) } };
        var drive = new DriveSimulation(Pulling(40), wrong) { Order = Forward(10) };

        drive.Run(6).SpeedRpm.ShouldBe(300, 2);
    }

    [Fact]
    public void The_poles_are_those_set_or_those_of_the_rated_speed()
    {
        WithEncoder.Encoder!.Poles.Poles.ShouldBe(4);
        WithEncoder.Encoder.PulsesPerTurn.ShouldBe(1024);
        ControlSettings.From(MotorSettings.With(Setting.ControlMethod, "encoder-vector").With(Setting.MotorPoleCount, 6), Drive).Encoder!.Poles.Poles.ShouldBe(6);
        Without.Encoder.ShouldBeNull();
        Without.Vector.ShouldBeTrue();
    }

    [Fact]
    public void An_encoder_without_pulses_is_refused() =>
        SystemCheck.Of(PumpSet, WithEncoder with { Encoder = WithEncoder.Encoder! with { PulsesPerTurn = 0 } }).ShouldHaveSingleItem().ToString().ShouldContain("encoder-pulses");

    [Fact]
    public void It_turns_round_through_zero_under_a_pulling_load()
    {
        var drive = new DriveSimulation(Pulling(30) with { BrakingResistor = Resistance.FromOhms(40) }, WithEncoder with { ReversePermitted = true, BrakingChopper = true }) { Order = Forward(20) };
        drive.Run(5);
        drive.Order = Forward(-20);

        var at = drive.Run(8);

        at.State.ShouldBe(DriveState.Running, at.Trip.ToString());
        at.SpeedRpm.ShouldBe(-600, 3);
    }

    // A weight, which pulls the same way whichever way it moves.
    private static DriveSystem Pulling(double loadNm) => PumpSet with
    {
        Machine = Pump with { Load = new LoadCurve.Hoisting(Torque.FromNewtonMetres(loadNm)), Breakaway = null },
        Brake = Torque.FromNewtonMetres(100),
    };
}
