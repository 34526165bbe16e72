using Runup.Files.Profiles;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Files.Tests.Profiles;

public sealed class TernTests
{
    [Fact]
    public void Tern_is_read_without_problem_or_caution()
    {
        var problems = new Problems("tern");
        var cautions = new Problems("tern");
        ProfileReader.ReadFile(Drives.PathOf("tern"), problems, cautions).ShouldNotBeNull();
        problems.InOrder().ShouldBeEmpty();
        cautions.InOrder().ShouldBeEmpty();
    }

    [Fact]
    public void It_has_all_sizes_and_the_parameters_of_a_full_drive()
    {
        Drives.Tern.Sizes.Select(s => s.Name).ShouldBe(["0.75-400", "1.5-400", "2.2-400", "4-400", "5.5-400", "7.5-400", "11-400", "15-400", "22-400", "30-400", "45-400", "75-400"]);
        Drives.Tern.Parameters.Count(p => p.IsKept).ShouldBeGreaterThanOrEqualTo(120);
    }

    [Fact]
    public void The_rating_of_a_size_comes_from_its_row_and_its_class()
    {
        var rating = Drives.Size("7.5-400").Rating;
        rating.Overloads.Select(o => o.Name).ShouldBe(["normal", "heavy"]);
        rating.Overloads[0].Current.Amperes.ShouldBe(17);
        rating.Overloads[1].Current.Amperes.ShouldBe(13.6);
        rating.Overloads[1].Overload.Ratio.ShouldBe(1.5, 1e-12);
        rating.Overloads[1].For.Seconds.ShouldBe(60);
        rating.Overloads[1].Every.Seconds.ShouldBe(600);
        rating.PeakCurrent.Amperes.ShouldBe(1.8 * 13.6, 1e-9);
        rating.PeakTime.Seconds.ShouldBe(2);
        rating.OvercurrentTrip.Amperes.ShouldBe(2.2 * 13.6, 1e-9);
        rating.BusCapacitance.Farads.ShouldBe(540e-6, 1e-12);
        rating.LowestBrakingResistance!.Value.Ohms.ShouldBe(40);
        rating.DcChoke.Ratio.ShouldBe(0.04, 1e-12);
        Drives.Size("5.5-400").Rating.DcChoke.Ratio.ShouldBe(0);
        (rating.OvervoltageTrip.Volts, rating.OvervoltageControl.Volts, rating.ChopperLevel.Volts, rating.UndervoltageTrip.Volts).ShouldBe((820, 780, 760, 380));
        rating.OutputRiseTime!.Value.Seconds.ShouldBe(0.1e-6, 1e-12);
        rating.SwitchingDerating.Select(p => (p.Frequency.Hertz, Math.Round(p.Current.Percent, 9))).ShouldBe([(2000, 100), (4000, 100), (8000, 85), (12000, 70)]);
        rating.AmbientDerating.FullUpTo.Celsius.ShouldBe(40, 1e-9);
        rating.AmbientDerating.LossPerSi.ShouldBe(0.015, 1e-12);
        rating.AltitudeDerating.LossPerSi.ShouldBe(0.0001, 1e-12);
        rating.AltitudeDerating.Highest.Metres.ShouldBe(4000);
    }

    [Fact]
    public void A_default_by_size_is_the_sizes_own()
    {
        var profile = Drives.Tern;
        ParameterValues.Defaults(profile, Drives.Size("7.5-400"))["104"]!.Value.ShouldBe(750);
        ParameterValues.Defaults(profile, Drives.Size("75-400"))["106"]!.Value.ShouldBe(1320);
        foreach (var size in profile.Sizes)
        {
            var plate = ParameterValues.Defaults(profile, size)["106"]!.Value * 0.1;
            plate.ShouldBeLessThanOrEqualTo(size.Rating.Overloads[0].Current.Amperes, $"the factory motor of {size.Name} is within its normal current");
        }
    }

    [Fact]
    public void Every_value_of_every_parameter_comes_back_from_display_and_registers() =>
        RoundTrip.Check(Drives.Tern, Drives.Size("7.5-400")).ShouldBeEmpty();

    [Fact]
    public void From_the_factory_it_runs_from_the_panel_at_fifty_hertz()
    {
        var settings = SettingsReader.Read(Drives.Tern, Drives.Size("7.5-400"), ParameterValues.Defaults(Drives.Tern, Drives.Size("7.5-400")));
        settings.Choice(Setting.RunCommandSource).ShouldBe("panel");
        settings.Choice(Setting.PermittedDirection).ShouldBe("forward");
        settings.Number(Setting.MaximumFrequency).ShouldBe(50);
        settings.Number(Setting.AccelerationTime)!.Value.ShouldBe(5, 1e-9);
        settings.Number(Setting.MotorRatedPower)!.Value.ShouldBe(7500, 1e-9);
        settings.Number(Setting.CurrentLimit)!.Value.ShouldBe(1.5 * 14.2, 1e-9);
        settings.Number(Setting.MotorRatedSpeed)!.Value.ShouldBe(1450 * Math.PI / 30, 1e-9);
        settings.Number(Setting.BaudRate).ShouldBe(19200);
        settings.Choice(Setting.Parity).ShouldBe("even");
        settings[Setting.MaximumOutputVoltage].ShouldBeNull();
        settings[Setting.SkipFrequency1].ShouldBeNull();
    }

    [Fact]
    public void The_sheet_of_a_pump_walks_the_menu_and_ends_with_the_run_source()
    {
        var plan = SettingSet.Empty
            .With(Setting.MotorRatedPower, 7500).With(Setting.MotorRatedVoltage, 400).With(Setting.MotorRatedCurrent, 14.4)
            .With(Setting.MotorRatedSpeed, 1460 * Math.PI / 30).With(Setting.MotorPowerFactor, 0.83).With(Setting.MotorPoleCount, 4)
            .With(Setting.PowerUnit, "kW").With(Setting.BaseFrequency, 50).With(Setting.MaximumFrequency, 50).With(Setting.MinimumFrequency, 20)
            .With(Setting.AccelerationTime, 10).With(Setting.DecelerationTime, 15).With(Setting.CurrentLimit, 18.7)
            .With(Setting.VfCharacteristic, "quadratic").With(Setting.RunCommandSource, "bus").With(Setting.PermittedDirection, "forward")
            .With(Setting.FrequencyReferenceSource, "bus").With(Setting.BusTimeout, 0.4).With(Setting.BusLossAction, "ramp")
            .With(Setting.RestartAfterPowerLoss, "off").With(Setting.SkipWidth, 2);
        var size = Drives.Size("7.5-400");
        var lines = Sheet.For(Drives.Tern, size, plan, ParameterValues.Defaults(Drives.Tern, size));
        string.Join('\n', lines.Select(l => $"{l.Order} {l.Parameter?.Number} {string.Join('+', l.Settings)} = {l.Display} {l.Unit} ({l.Default?.Display}) {l.Mapping?.Name()} {(l.Changed ? "changed" : "as it is")}")).ShouldBe(
            """
            1 105 motor-rated-voltage = 400 V (400) direct as it is
            2 106 motor-rated-current = 14.4 A (14.2) direct changed
            3 107 motor-rated-speed = 1460 rpm (1450) direct changed
            4 108 motor-power-factor = 0.83  (0.80) direct changed
            5 109 motor-pole-count = 4  (4) direct as it is
            6 131 power-unit = kW  (kW) direct as it is
            7 104 motor-rated-power = 7.50 kW (7.50) direct as it is
            8 150 base-frequency = 50.0 Hz (50.0) direct as it is
            9 151 maximum-frequency = 50.0 Hz (50.0) direct as it is
            10 152 minimum-frequency = 20.0 Hz (0.0) direct changed
            11 156 vf-characteristic = square  (straight) direct changed
            12 170 acceleration-time = 10.00 s (5.00) converted changed
            13 172 deceleration-time = 15.00 s (5.00) converted changed
            14 190 current-limit = 130 % (150) converted changed
            15 221 frequency-reference-source = bus  (panel) direct changed
            16 260 bus-timeout = 0.4 s (0.0) direct changed
            17 261 bus-loss-action = ramp  (none) direct changed
            18 220 run-command-source+permitted-direction = bus forward  (panel forward) converted changed
            19 223 restart-after-power-loss = no  (no) direct as it is
            20  skip-width =   () not-offered as it is
            """);
    }

    [Fact]
    public void What_can_start_the_motor_goes_last_and_only_the_lock_after_it()
    {
        var order = EntryOrder.Of(Drives.Tern).Where(p => p.IsKept).Select(p => p.Number).ToList();
        order[^5..].ShouldBe(["220", "223", "224", "225", "370"]);
        Drives.Tern.Parameters.Where(EntryOrder.CanStartMotor).Select(p => p.Number).ShouldBe(["220", "223", "224", "225"]);
    }

    [Fact]
    public void Process_as_source_of_the_frequency_needs_a_person_because_Tern_has_no_such_choice()
    {
        var size = Drives.Size("7.5-400");
        var line = Sheet.For(Drives.Tern, size, SettingSet.Empty.With(Setting.FrequencyReferenceSource, "process"), ParameterValues.Defaults(Drives.Tern, size)).ShouldHaveSingleItem();
        line.Mapping.ShouldBe(Mapping.NeedsChoice);
        line.Note.ShouldBe("The drive has no such choice; it offers \"panel\", \"analogue 1\", \"analogue 2\", \"bus\", \"fixed\".");
    }

    [Theory]
    [InlineData("112")]
    [InlineData("179")]
    [InlineData("194")]
    [InlineData("195")]
    [InlineData("213")]
    [InlineData("1018")]
    public void What_is_easily_taken_for_a_setting_means_none(string number) => Drives.Tern.Find(number)!.Meaning.ShouldBeNull();
}
