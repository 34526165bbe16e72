using System.Text;
using Runup.Files.Listings;
using Runup.Profiles;

namespace Runup.Files.Tests.Listings;

/// <summary>What manuals do with rows and columns.</summary>
public sealed class TableTests
{
    [Fact]
    public void Choices_may_stand_in_rows_beneath_in_two_cells_or_one()
    {
        var rows = Reading.Rows("""
            No.,Name,Range,Default
            131,Power stated in,,0
            ,,0: kW,
            ,,1: hp,
            132,Winding,,1
            ,0,star,
            ,1,delta,
            133,Stop,0 = ramp,0
            ,,1 = coast,
            """);
        rows.Select(Reading.Shown).ShouldBe(["?..?  x? = 0 [0 kW, 1 hp]", "?..?  x? = 1 [0 star, 1 delta]", "?..?  x? = 0 [0 ramp, 1 coast]"]);
    }

    [Fact]
    public void A_heading_may_stand_over_several_columns_that_have_their_own_beneath() =>
        Reading.Rows("""
            Par,Description,Adjustment span,,,Units,As shipped,Modbus
            ,,Low,High,Incr.,,,(hex)
            30,Top speed,10.0,120.0,0.5,Hz,60.0,020A
            31,Bottom speed,0.0,60.0,0.5,Hz,15.0,020B
            32,Soft ends on ramps,0.0,20.0,0.5,sec,0.0,020C
            """).Select(r => $"{r.Number} {Reading.Shown(r)} {r.Register}").ShouldBe(["30 10.0..120.0 Hz x0.5 = 60.0 [] 522", "31 0.0..60.0 Hz x0.5 = 15.0 [] 523", "32 0.0..20.0 s x0.5 = 0.0 [] 524"]);

    [Fact]
    public void The_tables_own_legend_explains_its_marks_of_access() =>
        Reading.Rows("""
            No.;Name;Range;Unit;Default;Access
            30;Top speed;10.0 - 120.0;Hz;60.0;X
            31;Ramp up;0.1 - 60.0;s;5.0;RW
            90;Output;0.0 - 120.0;Hz;;RO
            RW = any time; X = drive stopped; RO = display only;;;
            """.Replace("X = drive stopped; RO", "X = drive stopped, RO", StringComparison.Ordinal).Replace("time; X", "time, X", StringComparison.Ordinal)).Select(r => r.Access).ShouldBe([ParameterAccess.StoppedOnly, ParameterAccess.AnyTime, ParameterAccess.ReadOnly]);

    [Fact]
    public void Signs_of_access_are_explained_in_a_line_beneath() =>
        Reading.Rows("No.\tName\tRange\tDefault\tModify\n1\tRamp up\t0.1~60.0 s\t5.0\t○\n2\tTop speed\t10~120 Hz\t50\t×\n3\tOutput\t0~120 Hz\t\t●\n○: can be modified in running; ×: cannot be modified in running; ●: detected value\n")
            .Select(r => r.Access).ShouldBe([ParameterAccess.AnyTime, ParameterAccess.StoppedOnly, ParameterAccess.ReadOnly]);

    [Theory]
    [InlineData("Locked in run", ParameterAccess.StoppedOnly, ParameterAccess.AnyTime)]
    [InlineData("Stop to change", ParameterAccess.StoppedOnly, ParameterAccess.AnyTime)]
    [InlineData("Change in run", ParameterAccess.AnyTime, ParameterAccess.StoppedOnly)]
    public void A_column_may_ask_for_the_lock_instead(string heading, ParameterAccess yes, ParameterAccess no) =>
        Reading.Rows($"No.;Name;Range;Unit;Default;{heading}\n1;Top speed;10 - 120;Hz;50;yes\n2;Ramp up;0.1 - 60.0;s;5.0;no\n3;Output;0 - 120;Hz;;-\n").Select(r => r.Access).ShouldBe([yes, no, null]);

    [Fact]
    public void Choices_may_be_printed_once_and_referred_to() =>
        Reading.Rows("""
            Par,Description,Default,Selections
            140,Terminal 1 does,1,"0 = Nothing, 1 = Run, 2 = Reset"
            141,Terminal 2 does,2,see 140
            142,Terminal 3 does,0,As terminal 1
            143,Terminal 4 does,0,ditto
            """).Select(r => Reading.Shown(r)[^27..]).ShouldBe(["[0 Nothing, 1 Run, 2 Reset]", "[0 Nothing, 1 Run, 2 Reset]", "[0 Nothing, 1 Run, 2 Reset]", "[0 Nothing, 1 Run, 2 Reset]"]);

    [Fact]
    public void Lines_whose_columns_were_lost_may_have_the_limits_in_columns_of_their_own() =>
        Reading.Rows("""
            Par Description Low High Incr. Units Shipped
            30 Top speed 10.0 120.0 0.1 Hz 60.0
            40 Avoid speed 1 0.0 120.0 0.1 Hz 0.0
            15 Power factor 0.50 0.99 0.01 0.84
            34 Speed up time 0.1 999.9 0.1 sec 20.0
            35 Slow down time 0.1 999.9 0.1 sec 20.0
            63 Stop mode 0 = Coast 1 = Ramp
            91 Slip makeup 0 150 1 % 0
            """, ListingKind.Pasted).Select(r => $"{r.Number} {r.Name}: {Reading.Shown(r)}").ShouldBe([
                "30 Top speed: 10.0..120.0 Hz x0.1 = 60.0 []", "40 Avoid speed 1: 0.0..120.0 Hz x0.1 = 0.0 []", "15 Power factor: 0.50..0.99  x0.01 = 0.84 []",
                "34 Speed up time: 0.1..999.9 s x0.1 = 20.0 []", "35 Slow down time: 0.1..999.9 s x0.1 = 20.0 []", "63 Stop mode: ?..?  x? = ? [0 Coast, 1 Ramp]", "91 Slip makeup: 0..150 % x1 = 0 []",
            ]);

    [Fact]
    public void A_column_that_the_table_does_not_have_is_told()
    {
        var problems = new Problems("t");
        ListingFile.ReadText("No.;Name\n1;Ramp\n", ListingKind.Csv, new ListingOptions { Columns = new Dictionary<ColumnRole, int> { [ColumnRole.Name] = 25 } }, problems, new Problems("t")).ShouldBeNull();
        problems.InOrder().Single().ToString().ShouldContain("there is no column Z for the name; a column from A to B would do");
    }

    [Fact]
    public void Choices_may_stand_with_the_name() =>
        Reading.Rows("""
            ID;Description;Min;Max;Unit;Default
            8;Winding (0 = star, 1 = delta);;;;0
            9;Type of stop: 0 = coast, 1 = ramp (S-shaped);;;;1
            10;Reset count (0 = none);0;10;;0
            """).Select(r => $"{r.Name}: {Reading.Shown(r)}").ShouldBe(["Winding: ?..?  x? = 0 [0 star, 1 delta]", "Type of stop: ?..?  x? = 1 [0 coast, 1 ramp (S-shaped)]", "Reset count (0 = none): 0..10  x1 = 0 []"]);

    [Fact]
    public void A_numbered_heading_is_no_choice_of_the_row_above_it() =>
        Reading.Rows("""
            Nr.   Designation             Setting range     Dim.   Works
            1.    Motor data
            1011  Temperature feeler      0 = none                 0
                                          1 = PTC
            2.    Control
            1101  Damping                 0 – 100           %      30
            3.    Ramps
            1201  Run-up time             0,1 – 60,0        s      5,0
            """.Replace("1.    M", "1. M", StringComparison.Ordinal).Replace("2.    C", "2. C", StringComparison.Ordinal).Replace("3.    R", "3. R", StringComparison.Ordinal), ListingKind.Pasted)
            .Select(r => $"{r.Number} {r.Group}: {Reading.Shown(r)}").ShouldBe(["1011 Motor data: ?..?  x? = 0 [0 none, 1 PTC]", "1101 Control: 0..100 % x1 = 30 []", "1201 Ramps: 0.1..60.0 s x0.1 = 5.0 []"]);

    [Fact]
    public void A_make_may_number_its_parameters_by_their_registers_alone() =>
        Reading.Rows("Address (DEC)\tItem\tSetting scope\tStep\tEx-factory\n4096\tUpper limit\t10.00~300.00\t0.01Hz\t50.00\n4097\tLower limit\t0.00~300.00\t0.01Hz\t0.50\n4100\tRamp up\t0.1~3600.0\t0.1s\t8.0\n")
            .Select(r => $"{r.Number} {r.Register} {Reading.Shown(r)}").ShouldBe(["4096 4096 10.00..300.00 Hz x0.01 = 50.00 []", "4097 4097 0.00..300.00 Hz x0.01 = 0.50 []", "4100 4100 0.1..3600.0 s x0.1 = 8.0 []"]);

    [Fact]
    public void A_bracket_at_the_end_of_a_name_is_no_footnote() =>
        Reading.Rows("No.;Name;Range;Unit;Default\n5;Run-down time (base frequency to 0);0.1 - 60.0;s;5.0\n6;Motor current 1);0.1 - 60.0;A;5.0\n").Select(r => r.Name).ShouldBe(["Run-down time (base frequency to 0)", "Motor current"]);

    [Fact]
    public void Quotes_that_are_no_begin_of_a_cell_join_no_lines() =>
        Reading.Rows("No.;Name;Range;Unit;Default\n5;\"Ramp up;0.1 - 60.0;s;5.0\n6;Pipe 5\" wide;0.1 - 60.0;m;5.0\n7;\"Ramp; down\";0.1 - 60.0;s;5.0\n").Select(r => $"{r.Line} {r.Name}").ShouldBe(["2 \"Ramp up", "3 Pipe 5\" wide", "4 Ramp; down"]);

    [Fact]
    public void Choices_beneath_may_stand_in_the_column_of_the_numbers() =>
        Reading.Rows("""
            No.;Name;Range;Default
            131;Power stated in;;0
            0;kW;;
            1;hp;;
            132;Voltage;100...500 V;400
            """).Select(r => $"{r.Number} {Reading.Shown(r)}").ShouldBe(["131 ?..?  x? = 0 [0 kW, 1 hp]", "132 100..500 V x1 = 400 []"]);

    [Fact]
    public void Headings_give_groups_and_the_header_may_come_again_on_each_page() =>
        Reading.Rows("""
            No.;Name;Range;Unit;Default
            Group 1: Motor;;;;
            104;Output;0.05...150.00;kW;4.00
            No.;Name;Range;Unit;Default
            105;Voltage;100...500;V;400
            2 Ramps;;;;
            170;Acceleration;0.1...600.0;s;5.0
            """).Select(r => $"{r.Number} {r.Group}").ShouldBe(["104 Motor", "105 Motor", "170 Ramps"]);

    [Fact]
    public void A_column_of_groups_may_be_filled_once_as_merged_cells_are() =>
        Reading.Rows("""
            Menu,No.,Parameter,Min,Max,Units,Default
            Motor,104,Output,0.05,150.00,kW,4.00
            ,105,Voltage,100,500,V,400
            Ramps,170,Acceleration,0.1,600.0,s,5.0
            """).Select(r => $"{r.Number} {r.Group} {Reading.Shown(r)}").ShouldBe(["104 Motor 0.05..150.00 kW x0.01 = 4.00 []", "105 Motor 100..500 V x1 = 400 []", "170 Ramps 0.1..600.0 s x0.1 = 5.0 []"]);

    [Fact]
    public void A_cell_merged_downwards_may_come_with_each_of_its_rows() =>
        Reading.Rows("""
            No.,Name,Range,Default
            131,Power stated in,0: kW,0
            131,Power stated in,1: hp,0
            """).Single().Choices.Count.ShouldBe(2);

    [Fact]
    public void Cells_in_quotes_may_go_over_several_lines_and_lines_are_still_counted()
    {
        var (rows, problems, _) = Reading.Read("No.,Name,Range\n131,\"Power\nstated in\",\"0: kW\n1: hp\"\n132,Voltage,100-500 V\n132,Volts,100-500 V\n");
        rows[0].Name.ShouldBe("Power stated in");
        rows[0].Choices.Count.ShouldBe(2);
        problems.Single().ShouldBe("t:6:1 parameter 132: the number stands twice: in line 5 as `Voltage` and in line 6 as `Volts`; each number once; the first is kept");
    }

    [Fact]
    public void Units_may_stand_in_the_heading_or_behind_the_name() =>
        Reading.Rows("""
            No.;Name;Range (Hz);Default
            150;Base frequency;10.0-400.0;50.0
            170;Acceleration time [s];0.1-600.0;5.0
            """).Select(r => $"{r.Name} {r.Unit}").ShouldBe(["Base frequency Hz", "Acceleration time s"], Case.Sensitive);

    [Fact]
    public void Footnote_marks_decimal_commas_and_thousands_marks_are_understood() =>
        Reading.Rows("""
            No.;Name;Range;Unit;Default
            104*;Motor output ¹⁾;0,05…150,00;kW;4,00 *
            107;Motor speed 2);100…24.000;min-1;1.450
            """).Select(r => $"{r.Number} {r.Name} {Reading.Shown(r)}").ShouldBe(["104 Motor output 0.05..150.00 kW x0.01 = 4.00 []", "107 Motor speed 100..24000 rpm x1 = 1450 []"]);

    [Fact]
    public void Access_registers_and_types_are_read()
    {
        var rows = Reading.Rows("""
            No.,Name,Range,Default,R/W,Change while running,Modbus,Data type
            104,Output,0-100,1,RW,×,40105,U16
            170,Ramp,0-100,1,RW,○,40171,U32
            1003,Frequency,0-100,,RO,,41004,S16
            """);
        rows.Select(r => r.Access).ShouldBe([ParameterAccess.StoppedOnly, ParameterAccess.AnyTime, ParameterAccess.ReadOnly]);
        rows.Select(r => r.Register).ShouldBe([104, 170, 1003]);
        rows.Select(r => r.Width).ShouldBe([16, 32, 16]);
        rows[2].Signed.ShouldBe(true);
    }

    [Fact]
    public void Index_and_sub_index_may_have_a_column_each() =>
        Reading.Rows("""
            Index,Sub,Name,Range,Unit
            6046,1,Lowest velocity,0-24000,rpm
            ,2,Highest velocity,0-24000,rpm
            6075,0,Rated current,100-20000,mA
            """).Select(r => r.Number).ShouldBe(["6046h:1", "6046h:2", "6075h"]);

    [Fact]
    public void Special_values_may_stand_beside_a_range() =>
        Reading.Rows("""
            No.;Name;Range;Unit;Default
            157;Full voltage;0 = as motor; 100...500;V
            260;Time-out;"0.1...60.0; 0 = off";s;0.0
            """)[1].High.ShouldBe(60.0m);

    [Fact]
    public void A_row_that_cannot_be_read_is_told_with_its_cell_and_the_others_are_read()
    {
        var (rows, problems, cautions) = Reading.Read("""
            No.,Name,Range,Default
            104,Output,5 or so,1
            105,Voltage,100-500 V,400
            """);
        problems.ShouldBeEmpty();
        rows.Count.ShouldBe(2);
        cautions.ShouldBe(["t:2:3 parameter 104, cell C2: `5 or so` is neither a range nor choices; a range such as `0.0 to 400.0 Hz`, or choices such as `0: kW 1: hp`, would do"]);
    }

    [Fact]
    public void Choices_that_are_only_named_are_counted_and_that_is_said()
    {
        var (rows, _, cautions) = Reading.Read("No.,Name,Options,Default\n131,Power stated in,kW / hp,kW\n");
        Reading.Shown(rows[0]).ShouldBe("?..?  x? = 0 [0 kW, 1 hp]");
        cautions.Single().ShouldContain("they are counted from 0; compare with the drive");
    }

    [Fact]
    public void Text_with_columns_of_blanks_is_taken_apart_by_where_they_stand() =>
        Reading.Rows("""
            No.   Name                      Range            Unit   Default

            Motor

            104   Motor output              0.05 to 150.00   kW     4.00
            106   Motor current             0.1 to 200.0     A         8.2
            131   Motor output stated in    0: kW                   0
                                            1: hp
            150   Frequency at which full   10.0 to 400.0    Hz     50.0
                  voltage is reached
            """, ListingKind.Pasted).Select(r => $"{r.Number} {r.Group}: {r.Name} {Reading.Shown(r)}").ShouldBe([
                "104 Motor: Motor output 0.05..150.00 kW x0.01 = 4.00 []",
                "106 Motor: Motor current 0.1..200.0 A x0.1 = 8.2 []",
                "131 Motor: Motor output stated in ?..?  x? = 0 [0 kW, 1 hp]",
                "150 Motor: Frequency at which full voltage is reached 10.0..400.0 Hz x0.1 = 50.0 []",
            ]);

    [Fact]
    public void Text_whose_columns_were_lost_is_taken_apart_by_what_stands_in_it() =>
        Reading.Rows("""
            104 Motor output 0.05-150.00 kW 4.00
            105 Motor voltage 100-500 V 400
            131 Motor output stated in 0: kW 1: hp
            150 Frequency at full voltage 10.0 to 400.0 Hz 50.0
            """, ListingKind.Pasted).Select(r => $"{r.Number} {r.Name} {Reading.Shown(r)}").ShouldBe([
                "104 Motor output 0.05..150.00 kW x0.01 = 4.00 []",
                "105 Motor voltage 100..500 V x1 = 400 []",
                "131 Motor output stated in ?..?  x? = ? [0 kW, 1 hp]",
                "150 Frequency at full voltage 10.0..400.0 Hz x0.1 = 50.0 []",
            ]);

    [Fact]
    public void Text_whose_cells_came_one_beneath_the_other_is_put_together_again() =>
        Reading.Rows("""
            104
            Motor output
            0.05 to 150.00
            kW
            4.00
            131
            Motor output stated in
            0: kW
            1: hp
            0
            105
            Motor voltage
            100 to 500 V
            400
            170
            Acceleration
            0.10 to 600.00 s
            5.00
            """, ListingKind.Pasted).Select(r => $"{r.Line} {r.Number} {r.Name} {Reading.Shown(r)}").ShouldBe([
                "1 104 Motor output 0.05..150.00 kW x0.01 = 4.00 []",
                "6 131 Motor output stated in ?..?  x? = 0 [0 kW, 1 hp]",
                "11 105 Motor voltage 100..500 V x1 = 400 []",
                "15 170 Acceleration 0.10..600.00 s x0.01 = 5.00 []",
            ]);

    [Fact]
    public void Bare_figures_without_headings_are_told_apart_by_what_lies_between_what() =>
        Reading.Rows("""
            104,Motor output,kW,0.05,150.00,4.00,0.01
            105,Motor voltage,V,100,500,400,1
            106,Motor current,A,0.1,200.0,8.2,0.1
            170,Acceleration time,s,0.10,600.00,5.00,0.01
            """).Select(r => $"{r.Number} {r.Name} {Reading.Shown(r)}").ShouldBe([
                "104 Motor output 0.05..150.00 kW x0.01 = 4.00 []",
                "105 Motor voltage 100..500 V x1 = 400 []",
                "106 Motor current 0.1..200.0 A x0.1 = 8.2 []",
                "170 Acceleration time 0.10..600.00 s x0.01 = 5.00 []",
            ]);

    [Fact]
    public void A_limit_that_another_parameter_gives_is_left_open_and_told()
    {
        var (rows, _, cautions) = Reading.Read("No.,Name,Range,Default\n150,Base frequency,10.0 to No. 151,50.0\n151,Highest,10.0 to 400.0 Hz,50.0\n");
        Reading.Shown(rows[0]).ShouldBe("10.0..?  x0.1 = 50.0 []");
        cautions.Single().ShouldContain("gives one number only; it is taken for the lowest value; the highest is left open");
    }

    [Fact]
    public void Bars_make_columns_and_rules_between_them_are_no_rows() =>
        Reading.Rows("""
            | No | Name | Range | Def |
            |----|------|-------|-----|
            | 104 | Output | 0.05-150.00 kW | 4.00 |
            | 105 | Voltage | 100-500 V | 400 |
            """, ListingKind.Pasted).Select(r => r.Unit).ShouldBe(["kW", "V"]);

    [Fact]
    public void Bytes_that_are_not_utf_8_are_read_as_older_spreadsheets_wrote_them()
    {
        byte[] bytes = [.. Encoding.ASCII.GetBytes("No.;Name;Range;Unit\n205;Temperature;0"), 0x85, .. Encoding.ASCII.GetBytes("120;"), 0xB0, .. Encoding.ASCII.GetBytes("C\n206;Other;0"), 0x85, .. Encoding.ASCII.GetBytes("5;s\n")];
        var cautions = new Problems("t");
        var listing = ListingFile.Read(bytes, ListingKind.Csv, ListingOptions.Guess, new Problems("t"), cautions)!;
        Reading.Shown(listing.Parameters[0]).ShouldBe("0..120 °C x1 = ? []");
        cautions.InOrder().Single().Found.ShouldBe("characters that are not UTF-8");
    }

    [Fact]
    public void A_column_may_be_named_where_the_guess_is_wrong()
    {
        var told = new ListingOptions { Columns = new Dictionary<ColumnRole, int> { [ColumnRole.Name] = 2, [ColumnRole.Remark] = 1 } };
        var listing = ListingFile.ReadText("No.,Name,Code name,Range\n1,Output of motor,pwr,0-5\n2,Voltage of motor,vlt,0-5\n", ListingKind.Csv, told, new Problems("t"), new Problems("t"))!;
        listing.Parameters[0].Name.ShouldBe("pwr");
    }

    [Theory]
    [InlineData("")]
    [InlineData("only words\nand more words\n")]
    [InlineData("a,b,c\nd,e,f\n")]
    [InlineData("\t \n  \n")]
    [InlineData("104\tsub\n\t1\n")]
    public void What_is_no_table_is_told_so(string text)
    {
        Reading.Read(text).Problems.ShouldNotBeEmpty();
        Reading.Read(text, ListingKind.Pasted).Problems.ShouldNotBeEmpty();
    }
}
