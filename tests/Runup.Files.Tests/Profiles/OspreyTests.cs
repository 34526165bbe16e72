using Runup.Files.Profiles;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Files.Tests.Profiles;

public sealed class OspreyTests
{
    private static readonly DriveSize Size = Drives.Osprey.FindSize("7.5-400")!;

    /// <summary>The rows that the make's list fixes, in its order.</summary>
    private static readonly string[] Fixed =
    [
        "6040h", "6041h", "6042h", "6043h", "6044h", "6046h:1", "6046h:2", "6048h:1", "6048h:2", "6049h:1", "6049h:2", "604Ah:1", "604Ah:2", "6073h", "6075h", "6080h",
        "2101h", "2102h", "2103h", "2104h", "2105h", "2106h", "2107h", "2108h", "2110h", "2120h", "2121h", "2122h", "2123h", "2124h", "2125h", "2126h",
        "2140h", "2141h", "1010h:1", "603Fh", "2142h", "2143h", "2144h", "2150h", "2151h", "2152h", "2153h", "6077h", "6078h", "6079h", "2160h", "2161h",
    ];

    [Fact]
    public void Osprey_is_read_without_problem_or_caution()
    {
        var problems = new Problems("osprey");
        var cautions = new Problems("osprey");
        ProfileReader.ReadFile(Drives.PathOf("osprey"), problems, cautions);
        problems.InOrder().ShouldBeEmpty();
        cautions.InOrder().ShouldBeEmpty();
    }

    [Fact]
    public void Its_readings_stand_on_the_rated_current_alone() =>
        ReadingCodec.StandOn(Drives.Osprey).Select(p => p.Number).ShouldBe(["6075h"]);

    [Fact]
    public void Those_of_the_other_make_stand_on_nothing() => ReadingCodec.StandOn(Drives.Tern).ShouldBeEmpty();

    [Fact]
    public void It_has_all_sizes_and_the_parameters_of_a_full_drive()
    {
        Drives.Osprey.Sizes.Select(s => s.Name).ShouldBe(
        [
            "0.37-230", "0.75-230", "1.5-230", "2.2-230",
            "0.75-400", "1.5-400", "2.2-400", "4-400", "5.5-400", "7.5-400", "11-400", "15-400", "22-400", "30-400", "45-400", "75-400",
        ]);
        Drives.Osprey.Parameters.Count(p => p.IsKept).ShouldBeGreaterThanOrEqualTo(120);
    }

    [Fact]
    public void A_register_is_twice_the_place_in_the_list_and_holds_32_bits_high_word_first()
    {
        Drives.Osprey.Parameters.Take(Fixed.Length).Select(p => p.Number).ShouldBe(Fixed);
        Drives.Osprey.Parameters.Select(p => (int)p.Register).ShouldBe(Enumerable.Range(0, Drives.Osprey.Parameters.Count).Select(i => 2 * i));
        Drives.Osprey.Parameters.ShouldAllBe(p => p.Width == 32 && p.Signed && p.WordOrder == WordOrder.HighFirst);
    }

    [Fact]
    public void A_400_V_size_of_both_makes_is_the_same_drive()
    {
        foreach (var tern in Drives.Tern.Sizes)
        {
            var osprey = Drives.Osprey.FindSize(tern.Name)!.Rating;
            osprey.Overloads.ShouldBe(tern.Rating.Overloads);
            osprey.SwitchingDerating.ShouldBe(tern.Rating.SwitchingDerating);
            (osprey.BusCapacitance, osprey.LowestBrakingResistance, osprey.DcChoke, osprey.OvervoltageTrip, osprey.UndervoltageTrip, osprey.SupplyPhases, osprey.OvercurrentTrip)
                .ShouldBe((tern.Rating.BusCapacitance, tern.Rating.LowestBrakingResistance, tern.Rating.DcChoke, tern.Rating.OvervoltageTrip, tern.Rating.UndervoltageTrip, tern.Rating.SupplyPhases, tern.Rating.OvercurrentTrip));
        }
    }

    [Theory]
    [InlineData("0.37-230", 2.4, 390, 100)]
    [InlineData("0.75-230", 4.2, 780, 70)]
    [InlineData("1.5-230", 7.5, 1200, 47)]
    [InlineData("2.2-230", 10, 1560, 33)]
    public void A_size_for_one_phase_has_its_own_class(string name, double amperes, double microfarads, double ohms)
    {
        var rating = Drives.Osprey.FindSize(name)!.Rating;
        rating.SupplyPhases.ShouldBe(1);
        (rating.SupplyVoltage.Low.Volts, rating.SupplyVoltage.High.Volts).ShouldBe((200, 240));
        rating.Overloads.Select(o => o.Current.Amperes).ShouldBe([amperes, amperes]);
        rating.BusCapacitance.Farads.ShouldBe(microfarads * 1e-6, 1e-12);
        rating.LowestBrakingResistance!.Value.Ohms.ShouldBe(ohms);
        rating.DcChoke.Ratio.ShouldBe(0);
        (rating.OvervoltageTrip.Volts, rating.OvervoltageControl.Volts, rating.ChopperLevel.Volts, rating.UndervoltageTrip.Volts).ShouldBe((410, 390, 380, 190));
    }

    [Theory]
    [InlineData("0.37-230")]
    [InlineData("7.5-400")]
    [InlineData("75-400")]
    public void Every_value_of_every_parameter_comes_back_from_display_and_registers(string size) =>
        RoundTrip.Check(Drives.Osprey, Drives.Osprey.FindSize(size)!).ShouldBeEmpty();

    [Theory]
    [InlineData("7.5-400", 400, 7500, 14.2)]
    [InlineData("0.37-230", 230, 370, 1.8)]
    public void From_the_factory_it_runs_from_the_panel_at_fifty_hertz(string name, double volts, double watts, double amperes)
    {
        var size = Drives.Osprey.FindSize(name)!;
        var settings = SettingsReader.Read(Drives.Osprey, size, ParameterValues.Defaults(Drives.Osprey, size));
        settings.Choice(Setting.RunCommandSource).ShouldBe("panel");
        settings.Choice(Setting.PermittedDirection).ShouldBe("forward");
        settings.Number(Setting.MaximumFrequency)!.Value.ShouldBe(50, 1e-9);
        settings.Number(Setting.MinimumFrequency)!.Value.ShouldBe(0, 1e-9);
        settings.Number(Setting.AccelerationTime)!.Value.ShouldBe(5, 1e-9);
        settings.Number(Setting.DecelerationTime)!.Value.ShouldBe(5, 1e-9);
        settings.Number(Setting.MotorPoleCount).ShouldBe(4);
        settings.Number(Setting.MotorRatedPower)!.Value.ShouldBe(watts, 1e-9);
        settings.Number(Setting.MotorRatedVoltage)!.Value.ShouldBe(volts, 1e-9);
        settings.Number(Setting.MaximumOutputVoltage)!.Value.ShouldBe(volts, 1e-9);
        settings.Number(Setting.CurrentLimit)!.Value.ShouldBe(1.5 * amperes, 1e-9);
        settings.Number(Setting.BaudRate).ShouldBe(19200);
        settings.Choice(Setting.Parity).ShouldBe("even");
        settings[Setting.SkipFrequency1].ShouldBeNull();
    }

    [Fact]
    public void What_can_start_the_motor_goes_last_and_only_the_lock_after_it() =>
        EntryOrder.Of(Drives.Osprey).Where(p => p.IsKept).Select(p => p.Number).ToList()[^5..].ShouldBe(["2140h", "2171h", "2172h", "2173h", "21D0h"]);

    [Fact]
    public void Both_makes_say_the_same_settings()
    {
        static HashSet<Setting> Said(DriveProfile profile) => [.. profile.Parameters.Where(p => p.Meaning is not null).SelectMany(p => p.Meaning!.Settings)];
        Said(Drives.Osprey).ShouldBe(Said(Drives.Tern), ignoreOrder: true);
    }

    [Theory]
    [InlineData("604Ah:1")]
    [InlineData("2112h")]
    [InlineData("2133h:1")]
    [InlineData("215Bh")]
    [InlineData("215Ch")]
    [InlineData("6080h")]
    public void What_is_easily_taken_for_a_setting_means_none(string number) => Drives.Osprey.Find(number)!.Meaning.ShouldBeNull();

    [Fact]
    public void Every_cause_has_a_code_and_a_code_that_CiA_402_does_not_have_is_of_the_makers_own_range()
    {
        // The codes of CiA 402 that the profile uses have text in the standard's list (data/tables/cia402-error-codes.csv), which names its source.
        var known = File.ReadLines(Path.Combine(Drives.Root, "data", "tables", "cia402-error-codes.csv")).Where(l => !l.StartsWith('#')).Skip(1).Select(l => l[..5]).ToHashSet(StringComparer.Ordinal);
        foreach (var code in Drives.Osprey.Trips.Codes.Select(c => c.Code))
        {
            (known.Contains($"{code:X4}h") || code is >= 0xFF00 and <= 0xFFFF).ShouldBeTrue($"{code:X4}h");
        }

        foreach (var cause in Enum.GetValues<TripCause>())
        {
            Drives.Osprey.Trips.CodeOf(cause).ShouldNotBeNull(cause.Name());
        }
    }
}
