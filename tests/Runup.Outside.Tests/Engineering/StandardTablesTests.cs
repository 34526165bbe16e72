using Runup.Engineering.Motors;
using Runup.Engineering.Standards;
using Runup.Quantities;

namespace Runup.Outside.Tests.Engineering;

/// <summary>Tables of standards in the product against what is printed, and facts of the trade that follow from them.</summary>
public sealed class StandardTablesTests
{
    [Theory]
    [InlineData(0.5, 115, 4.4)]
    [InlineData(1, 230, 4.2)]
    [InlineData(2, 460, 3.4)]
    [InlineData(5, 208, 16.7)]
    [InlineData(10, 460, 14)]
    [InlineData(25, 230, 68)]
    [InlineData(50, 575, 52)]
    [InlineData(100, 460, 124)]
    [InlineData(200, 2300, 49)]
    [InlineData(500, 460, 590)]
    public void Full_load_currents(double horsepower, double volts, double amperes)
    {
        // NFPA 70 (NEC), Table 430.250, read.
        FullLoadCurrent.Of(horsepower, LineVoltage.FromVolts(volts)).ShouldNotBeNull().Value.Amperes.ShouldBe(amperes);
    }

    [Fact]
    public void The_table_of_full_load_currents_is_whole()
    {
        // NEC Table 430.250: 27 outputs from 0.5 to 500 hp, each at up to seven voltages.
        FullLoadCurrent.All.Select(row => row.Horsepower).Distinct().Count().ShouldBe(27);
        FullLoadCurrent.All.Count(row => row.Voltage.Volts == 460).ShouldBe(27);
        FullLoadCurrent.All.Count(row => row.Voltage.Volts == 115).ShouldBe(5);
        FullLoadCurrent.All.Count(row => row.Voltage.Volts == 2300).ShouldBe(12);
    }

    [Fact]
    public void Currents_rise_with_output_and_fall_with_voltage()
    {
        // Common practice, no source: no column of such a table may turn back.
        foreach (var column in FullLoadCurrent.All.GroupBy(row => row.Voltage))
        {
            var ordered = column.OrderBy(row => row.Horsepower).Select(row => row.Current.Amperes).ToList();
            ordered.Zip(ordered.Skip(1)).ShouldAllBe(pair => pair.First < pair.Second);
        }
    }

    public static TheoryData<double, double, double> SmallMotors =>
        [.. FullLoadCurrent.All.Where(row => row.Horsepower is >= 0.5 and <= 5).Select(row => (row.Horsepower, row.Voltage.Volts, row.Current.Amperes))];

    [Theory]
    [MemberData(nameof(SmallMotors))]
    public void Efficiency_times_power_factor_of_small_motors_lies_between_two_fifths_and_nine_tenths(double horsepower, double volts, double amperes)
    {
        // Common practice, no source; held against every row of NEC Table 430.250 from 0.5 to 5 hp.
        var plate = new Nameplate
        {
            Output = ShaftPower.FromWatts(horsepower * Horsepower.Watts),
            Voltage = LineVoltage.FromVolts(volts),
            Current = LineCurrent.FromAmperes(amperes),
            Frequency = ElectricalFrequency.FromHertz(60),
            Speed = ShaftSpeed.FromRpm(1750),
        };
        PlateBalance.ImpliedProduct(plate).ShouldBeInRange(0.4, 0.9);
    }

    [Theory]
    [InlineData(0, 'A')]
    [InlineData(3.1499, 'A')]
    [InlineData(3.15, 'B')]
    [InlineData(3.5499, 'B')]
    [InlineData(3.55, 'C')]
    [InlineData(4.0, 'D')]
    [InlineData(4.5, 'E')]
    [InlineData(5.0, 'F')]
    [InlineData(5.595, 'F')]
    [InlineData(5.6, 'G')]
    [InlineData(6.3, 'H')]
    [InlineData(7.1, 'J')]
    [InlineData(8.0, 'K')]
    [InlineData(9.0, 'L')]
    [InlineData(10.0, 'M')]
    [InlineData(11.2, 'N')]
    [InlineData(12.5, 'P')]
    [InlineData(14.0, 'R')]
    [InlineData(16.0, 'S')]
    [InlineData(18.0, 'T')]
    [InlineData(20.0, 'U')]
    [InlineData(22.4, 'V')]
    [InlineData(100, 'V')]
    public void Code_letters_are_half_open_bands(double kilovoltAmperes, char letter)
    {
        // NFPA 70 (NEC), Table 430.7(B), read; half-open as in NEMA MG 1: a band ends where the next begins.
        CodeLetter.Holding(kilovoltAmperes).Letter.ShouldBe(letter);
        CodeLetter.Of(letter).ShouldBe(CodeLetter.Holding(kilovoltAmperes));
    }

    [Theory]
    [InlineData(0.5, 20, 'R')]
    [InlineData(1, 30, 'N')]
    [InlineData(2, 50, 'L')]
    [InlineData(5, 92, 'J')]
    [InlineData(10, 162, 'H')]
    public void Letters_of_the_largest_locked_rotor_currents(double horsepower, double amperes, char letter)
    {
        // NEMA MG 1, 12.35: largest locked-rotor current at 230 V of designs B, C and D, read in a handbook; the letter was computed elsewhere from it.
        CodeLetter.Holding(Math.Sqrt(3) * 230 * amperes / 1000 / horsepower).Letter.ShouldBe(letter);
    }

    [Theory]
    [InlineData(150, 460, 5.6, 1054, 0.5)] // Hubert, Ex. 5.13 p. 208, read: 1054 to 1186 A
    [InlineData(150, 460, 6.3, 1186, 0.5)]
    [InlineData(15, 208, 5.6, 233, 0.5)] // Chapman, Ex. 7-7 (6-7), from memory: 84 kVA, 233 A
    [InlineData(10, 230, 6.3, 158.1, 0.05)] // McPherson, Ex. 4.8 p. 78, read
    public void Locked_rotor_current_from_the_code_letter(double horsepower, double volts, double kilovoltAmperes, double amperes, double half)
    {
        var output = ShaftPower.FromWatts(horsepower * Horsepower.Watts);
        CodeLetter.LockedRotorCurrent(kilovoltAmperes, output, LineVoltage.FromVolts(volts)).Amperes.ShouldBe(amperes, half);
    }

    [Theory]
    [InlineData("IE2", 0.12, 2, 53.6)]
    [InlineData("IE2", 0.75, 4, 79.6)]
    [InlineData("IE2", 7.5, 2, 88.1)]
    [InlineData("IE2", 90, 6, 94.0)]
    [InlineData("IE3", 0.55, 8, 73.0)]
    [InlineData("IE3", 1.5, 4, 85.3)]
    [InlineData("IE3", 7.5, 4, 90.4)]
    [InlineData("IE3", 37, 2, 93.7)]
    [InlineData("IE3", 200, 4, 96.0)]
    [InlineData("IE4", 0.37, 6, 78.0)]
    [InlineData("IE4", 11, 4, 93.3)]
    [InlineData("IE4", 160, 8, 95.1)]
    public void Nominal_efficiencies(string className, double kW, int poles, double percent)
    {
        // IEC 60034-30-1, 50 Hz; the coefficients were read in UK SI 2021/745, schedule 16.
        var nominal = EfficiencyClass.Nominal(className, ShaftPower.FromWatts(1000 * kW), PoleCount.FromPoles(poles), ElectricalFrequency.FromHertz(50)).ShouldNotBeNull();
        (nominal.Value.Ratio * 100).ShouldBe(percent, 1e-9);
        nominal.Certainty.ShouldBe(Certainty.Seen);
    }

    [Theory]
    [InlineData("10A", 2.0, 10)]
    [InlineData("10", 4.0, 10)]
    [InlineData("20", 6.0, 20)]
    [InlineData("30", 9.0, 30)]
    public void Trip_times_at_seven_point_two_times_the_setting(string name, double notBefore, double within)
    {
        // IEC 60947-4-1, read in a secondary source.
        var trip = TripClass.Of(name).ShouldNotBeNull();
        trip.NotBefore!.Value.Seconds.ShouldBe(notBefore);
        trip.Within.Seconds.ShouldBe(within);
        trip.Certainty.ShouldBe(Certainty.Seen);
    }

    [Theory]
    [InlineData(1.5, 160)]
    [InlineData(2, 90)]
    [InlineData(3, 40)]
    [InlineData(6, 10)]
    [InlineData(7.2, 6.94)]
    public void Plain_square_law_of_class_10(double current, double seconds)
    {
        // Read as a protection relay's table of curves.
        TripClass.Of("10")!.TripTime(current).Seconds.ShouldBe(seconds, 0.005);
    }

    [Theory]
    [InlineData("N", 7.5, 4, 1.6, 2.0, true)]
    [InlineData("N", 6.3, 2, 1.5, 2.0, true)]
    [InlineData("N", 110, 6, 1.0, 1.7, false)]
    [InlineData("B", 7.457, 4, 1.65, 2.0, false)]
    [InlineData("B", 74.57, 8, 1.25, 2.0, false)]
    public void Design_letters_promise_torques(string letter, double kW, int poles, double starting, double breakdown, bool isSeen)
    {
        // IEC 60034-12 design N, 2 and 4 poles up to 16 kW read in a public table, the rest from memory; a band holds its upper end, not its lower.
        // NEMA MG 1 12.38 and 12.39, designs A and B, 60 Hz: 10 hp 1800 rpm 165/200 %, 100 hp 900 rpm 125/200 %.
        var limits = DesignLimits.Of(letter, ShaftPower.FromWatts(kW * 1000), PoleCount.FromPoles(poles), LineVoltage.FromVolts(460)).ShouldNotBeNull();
        limits.LockedRotorTorque!.Value.Value.ShouldBe(starting, 1e-9);
        limits.BreakdownTorque!.Value.Value.ShouldBe(breakdown, 1e-9);
        (limits.Certainty == Certainty.Seen).ShouldBe(isSeen);
    }

    [Theory]
    [InlineData(10, 230, 162)]
    [InlineData(50, 460, 362)]
    [InlineData(100, 575, 580)]
    public void Design_B_has_a_largest_locked_rotor_current(double horsepower, double volts, double amperes) =>
        // NEMA MG 1 12.35, read in a handbook page; other voltages than 230 V in inverse proportion, printed rounded.
        DesignLimits.Of("B", ShaftPower.FromWatts(horsepower * Horsepower.Watts), PoleCount.FromPoles(4), LineVoltage.FromVolts(volts))!
            .LockedRotorCurrent!.Value.Amperes.ShouldBe(amperes, 1);

    [Theory]
    [InlineData("premium", 10, 4, 91.7)]
    [InlineData("NEMA Premium", 100, 2, 94.1)]
    [InlineData("energy efficient", 10, 4, 89.5)]
    [InlineData("energy efficient", 200, 6, 95.0)]
    public void Efficiencies_of_NEMA(string name, double horsepower, int poles, double percent)
    {
        // NEMA MG 1-2018 Tables 12-12 and 12-11, enclosed, 60 Hz; agree with 10 CFR 431.25.
        EfficiencyClass.Nominal(name, ShaftPower.FromWatts(horsepower * Horsepower.Watts), PoleCount.FromPoles(poles), ElectricalFrequency.FromHertz(60))
            .ShouldNotBeNull().Value.Ratio.ShouldBe(percent / 100, 1e-9);
        EfficiencyClass.Nominal(name, ShaftPower.FromWatts(horsepower * Horsepower.Watts), PoleCount.FromPoles(poles), ElectricalFrequency.FromHertz(50)).ShouldBeNull();
    }
}
