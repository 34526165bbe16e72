using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Survey;
using Runup.Commissioning.Tests.Checks;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Plan;

public sealed class PlanTests
{
    private static SettingsPlan Pump { get; } = SettingsPlan.For(Jobs.Pump().Context());

    [Theory]
    [InlineData("motor-rated-power", 7500)]
    [InlineData("motor-rated-voltage", 400)]
    [InlineData("motor-rated-current", 14.4)]
    [InlineData("motor-rated-frequency", 50)]
    [InlineData("motor-rated-speed", 1460)]
    [InlineData("motor-power-factor", 0.83)]
    [InlineData("motor-pole-count", 4)]
    [InlineData("base-frequency", 50)]
    [InlineData("maximum-output-voltage", 400)]
    [InlineData("maximum-frequency", 50)]
    [InlineData("minimum-frequency", 20)]
    [InlineData("acceleration-time", 8)]
    [InlineData("deceleration-time", 12)]
    [InlineData("motor-overload-current", 14.4)]
    [InlineData("switching-frequency", 4)]
    [InlineData("station-address", 1)]
    [InlineData("bus-timeout", 2)]
    [InlineData("automatic-reset", 0)]
    public void The_pumps_numbers_are_those_of_plate_and_job(string name, double value)
    {
        var setting = Setting.Find(name)!;
        var si = Pump.Values.Number(setting)!.Value;
        (si / ((SettingForm.Numeric)setting.Form).SiPerUnit).ShouldBe(value, 1e-9);
    }

    [Fact]
    public void Fixed_frequencies_and_wired_terminals_are_planned_as_the_job_states_them()
    {
        var job = Jobs.Pump() with
        {
            Control = Jobs.Pump().Control with
            {
                ReferenceFrom = new("fixed"),
                FixedFrequencies = [new(Setting.FixedFrequency1, new(ElectricalFrequency.FromHertz(35))), new(Setting.FixedFrequency2, new(ElectricalFrequency.FromHertz(20)))],
                Terminals = new([new(Setting.DigitalInput2, new("enable")), new(Setting.Relay1, new("trip")), new(Setting.AnalogueOutput1Function, new("torque"))]),
            },
        };
        var plan = SettingsPlan.For(job.Context());
        (plan.Values.Number(Setting.FixedFrequency1), plan[Setting.FixedFrequency1]!.Rank).ShouldBe((35, Rank.Must));
        (plan.Values.Number(Setting.FixedFrequency2), plan[Setting.FixedFrequency2]!.Rank).ShouldBe((20, Rank.Should));
        (plan.Values.Choice(Setting.DigitalInput2), plan.Values.Choice(Setting.Relay1), plan.Values.Choice(Setting.AnalogueOutput1Function)).ShouldBe(("enable", "trip", "torque"));
    }

    [Fact]
    public void The_relay_that_opens_the_brake_is_the_brakes_whatever_the_terminals_say()
    {
        var job = Jobs.Pump() with
        {
            Motor = Jobs.Pump().Motor with { Brake = new(true) },
            Control = Jobs.Pump().Control with { BrakeRelay = new(2), Terminals = new([new(Setting.Relay2, new("running"))]) },
        };
        SettingsPlan.For(job.Context()).Lines.Where(l => l.Setting == Setting.Relay2).ShouldHaveSingleItem().Value.ShouldBe(new SettingValue.Choice("brake-open"));
    }

    [Theory]
    [InlineData("power-unit", "kW")]
    [InlineData("motor-connection", "delta")]
    [InlineData("vf-characteristic", "quadratic")]
    [InlineData("control-method", "vf")]
    [InlineData("overload-trip-class", "10")]
    [InlineData("motor-cooling", "shaft-fan")]
    [InlineData("motor-thermal-sensor", "ptc")]
    [InlineData("overvoltage-control", "on")]
    [InlineData("braking-chopper", "off")]
    [InlineData("stopping-method", "ramp")]
    [InlineData("permitted-direction", "forward")]
    [InlineData("run-command-source", "bus")]
    [InlineData("frequency-reference-source", "bus")]
    [InlineData("bus-loss-action", "ramp")]
    [InlineData("restart-after-power-loss", "off")]
    public void The_pumps_choices_are_those_of_the_job(string name, string choice) =>
        Pump.Values.Choice(Setting.Find(name)!).ShouldBe(choice);

    [Fact]
    public void Every_line_has_a_reason_and_a_source_and_stands_once()
    {
        foreach (var job in (Job[])[Jobs.Pump(), Jobs.Screw(), Jobs.Hoist()])
        {
            var plan = SettingsPlan.For(job.Context(11));
            plan.Lines.Select(line => line.Setting).ShouldBeUnique();
            foreach (var line in plan.Lines)
            {
                line.Reason.ShouldNotBeNullOrWhiteSpace();
                line.Source.ShouldNotBeNullOrWhiteSpace();
                if (line.Value is SettingValue.Number number)
                {
                    number.Si.ShouldBeInRange((line.Low ?? double.NegativeInfinity) - 1e-9, (line.High ?? double.PositiveInfinity) + 1e-9, line.Setting.Name);
                }
            }
        }
    }

    [Fact]
    public void The_current_limit_is_never_above_the_drives_overload()
    {
        foreach (var kW in (double[])[5.5, 7.5, 11, 22])
        {
            var context = Jobs.Pump().Context(kW);
            SettingsPlan.For(context).Values.Number(Setting.CurrentLimit)!.Value.ShouldBeLessThanOrEqualTo(context.Conditions.Overload.Amperes);
        }
    }

    [Fact]
    public void A_large_drive_gives_a_small_motor_half_as_much_again() =>
        SettingsPlan.For(Jobs.Pump().Context(22)).Values.Number(Setting.CurrentLimit)!.Value.ShouldBe(1.5 * 14.4, 1e-9);

    [Fact]
    public void A_ramp_that_cannot_be_kept_is_made_longer_and_says_so()
    {
        var job = Jobs.Pump().With((MachineSurvey m) => m with { Inertia = new(Inertia.FromKilogramSquareMetres(3)) });
        var plan = SettingsPlan.For(job.With((OperationSurvey o) => o with { Acceleration = new(Duration.FromSeconds(3)), Deceleration = new(Duration.FromSeconds(4)) }).Context());
        foreach (var (setting, asked) in ((Setting, double)[])[(Setting.AccelerationTime, 3), (Setting.DecelerationTime, 4)])
        {
            var line = plan[setting]!;
            ((SettingValue.Number)line.Value).Si.ShouldBeGreaterThan(asked);
            line.Reason.ShouldContain($"{asked} s are asked for");
            line.Low.ShouldNotBeNull();
        }
    }

    [Fact]
    public void A_ramp_that_needs_the_torque_of_full_flux_keeps_the_straight_characteristic()
    {
        var job = Jobs.Pump().With((MachineSurvey m) => m with { Inertia = new(Inertia.FromKilogramSquareMetres(3)) }).With((OperationSurvey o) => o with { Acceleration = new(Duration.FromSeconds(20)) });
        SettingsPlan.For(job.Context()).Values.Choice(Setting.VfCharacteristic).ShouldBe("linear");
    }

    [Fact]
    public void A_constant_load_gets_the_straight_characteristic_and_the_boost_that_breaks_it_away()
    {
        var plan = SettingsPlan.For(Jobs.Screw().Context(2.2));
        plan.Values.Choice(Setting.VfCharacteristic).ShouldBe("linear");
        var boost = plan[Setting.TorqueBoost]!;
        boost.Rank.ShouldBe(Rank.Must);
        boost.Reason.ShouldContain("11.2 N·m");
        ((SettingValue.Number)boost.Value).Si.ShouldBeInRange(0.01, 0.10);
    }

    [Fact]
    public void A_drive_for_one_phase_watches_no_second_one()
    {
        var screw = SettingsPlan.For(DemoFiles.Context("fs-301.job.yaml"));
        screw.Values.Choice(Setting.PhaseLoss).ShouldBe("off");
        Pump.Values.Choice(Setting.PhaseLoss).ShouldBe("trip");
    }

    [Fact]
    public void Of_a_hoist_it_is_not_said_that_volts_over_hertz_does() =>
        SettingsPlan.For(DemoFiles.Context("gh-501.job.yaml"))[Setting.ControlMethod]!.Reason.ShouldContain("identification run without the load");

    [Fact]
    public void A_motor_for_more_than_the_supply_gets_its_corner_where_the_supply_ends()
    {
        // 500 V 50 Hz on 400 V: full flux to 40 Hz.
        var plan = SettingsPlan.For(Jobs.Pump().With((PlateSurvey _) => Plates.Of("7.5 kW", 500, 11.5, 50, 1460, 4, 0.83, 90.4)).Context());
        plan.Values.Number(Setting.BaseFrequency)!.Value.ShouldBe(40, 1e-9);
        plan.Values.Number(Setting.MaximumOutputVoltage)!.Value.ShouldBe(400, 1e-9);
        plan.Values.Number(Setting.MotorRatedVoltage)!.Value.ShouldBe(500, 1e-9);
    }

    [Theory]
    [InlineData(398)]
    [InlineData(380)]
    [InlineData(480)]
    public void A_supply_within_its_usual_swing_or_above_leaves_the_plates_corner(double supply_V)
    {
        var plan = SettingsPlan.For((Jobs.Pump() with { Supply = Jobs.Pump().Supply with { Voltage = new(LineVoltage.FromVolts(supply_V)) } }).Context());
        (plan.Values.Number(Setting.BaseFrequency), plan.Values.Number(Setting.MaximumOutputVoltage)).ShouldBe((50, 400));
    }

    [Fact]
    public void A_plate_in_horsepower_is_entered_in_horsepower()
    {
        var plan = SettingsPlan.For(Jobs.Pump().With((PlateSurvey _) => Plates.Of("10 hp", 460, 12.4, 60, 1765, 4, 0.83, 91.7)).Context());
        plan.Values.Choice(Setting.PowerUnit).ShouldBe("hp");
        plan.Values.Number(Setting.MotorRatedPower)!.Value.ShouldBe(10 * Plates.Hp, 1e-6);
    }

    [Fact]
    public void A_resistor_switches_the_chopper_on_and_the_stretching_off()
    {
        var plan = SettingsPlan.For(Jobs.Hoist().Context(11));
        plan.Values.Choice(Setting.BrakingChopper).ShouldBe("on");
        plan.Values.Choice(Setting.OvervoltageControl).ShouldBe("off");
        plan.Values.Number(Setting.BrakingResistorResistance).ShouldBe(60);
        plan.Values.Number(Setting.BrakingResistorPower).ShouldBe(2000);
    }

    [Fact]
    public void A_bus_that_runs_the_drive_always_gets_a_time_out()
    {
        var plan = SettingsPlan.For((Jobs.Pump() with { Bus = Jobs.Pump().Bus with { TimeOut = null, OnLoss = null } }).Context());
        plan.Values.Number(Setting.BusTimeout)!.Value.ShouldBeGreaterThan(0);
        plan.Values.Choice(Setting.BusLossAction).ShouldBe("ramp");
    }

    [Fact]
    public void An_analogue_input_is_scaled_as_the_job_says()
    {
        var plan = SettingsPlan.For((Jobs.Pump() with
        {
            Control = new()
            {
                RunFrom = new("terminals"),
                ReferenceFrom = new("analogue-1"),
                Analogue1 = new(new("4..20 mA"), new(ElectricalFrequency.FromHertz(10)), new(ElectricalFrequency.FromHertz(50)), null),
            },
        }).Context());
        plan.Values.Choice(Setting.AnalogueInput1Type).ShouldBe("4..20 mA");
        plan.Values.Number(Setting.AnalogueInput1MinimumFrequency).ShouldBe(10);
        plan.Values.Number(Setting.AnalogueInput1MaximumFrequency).ShouldBe(50);
        plan.Values.Choice(Setting.AnalogueInput1LossAction).ShouldBe("stop");
        plan.Values.Number(Setting.BusTimeout).ShouldBeNull();
    }

    [Fact]
    public void Reverse_and_restart_are_only_as_asked_for()
    {
        var plan = SettingsPlan.For(Jobs.Pump().With((OperationSurvey o) => o with { Directions = new("both"), RestartAfterPowerLoss = new(true) }).Context());
        plan.Values.Choice(Setting.PermittedDirection).ShouldBe("both");
        plan.Values.Choice(Setting.RestartAfterPowerLoss).ShouldBe("on");
        var silent = SettingsPlan.For(Jobs.Pump().With((OperationSurvey o) => o with { Directions = null, RestartAfterPowerLoss = null }).Context());
        silent.Values.Choice(Setting.PermittedDirection).ShouldBe("forward");
        silent.Values.Choice(Setting.RestartAfterPowerLoss).ShouldBe("off");
    }

    [Theory]
    [InlineData(MotorKind.PermanentMagnet)]
    [InlineData(MotorKind.SynchronousReluctance)]
    public void A_motor_without_slip_is_not_told_of_slip_nor_run_on_volts_over_hertz(MotorKind kind)
    {
        // From the physics: a synchronous motor has no slip to reckon or to make up for. That V/f lets it fall out of step: common practice, no source.
        var plan = SettingsPlan.For((Jobs.Pump() with { Motor = Jobs.Pump().Motor with { Kind = new(kind) } }).Context());

        plan.Values.Choice(Setting.ControlMethod).ShouldBe("sensorless-vector");
        plan[Setting.SlipCompensation].ShouldBeNull();
        plan[Setting.MotorRatedSpeed]!.Reason.ShouldNotContain("slip");
        plan.Lines.ShouldAllBe(line => !line.Reason.Contains("prediction", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("machine.acceleration", "acceleration-time")]
    [InlineData("machine.deceleration", "deceleration-time")]
    public void Check_and_settings_name_the_same_ramp(string id, string setting)
    {
        var pump = Jobs.Pump();
        var heavy = pump with
        {
            Machine = pump.Machine with { Inertia = new(Inertia.FromKilogramSquareMetres(5)) },
            Operation = pump.Operation with { Acceleration = new(Duration.FromSeconds(1)), Deceleration = new(Duration.FromSeconds(1)) },
        };

        var planned = SettingsPlan.For(heavy.Context()).Values.Number(Setting.Find(setting)!)!.Value;

        heavy.Judge().Of(id).ShouldBeOfType<CheckResult.Violated>().Remedy.ShouldContain($"A ramp of {Said.Number(planned)} s or longer");
    }
}
