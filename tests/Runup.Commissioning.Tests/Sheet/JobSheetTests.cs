using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Rehearsal;
using Runup.Commissioning.Sheet;
using Runup.Commissioning.Tests.Checks;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Sheet;

public sealed class JobSheetTests
{
    private static DriveSize Size { get; } = DemoFiles.TernSize("7.5-400");

    private static SettingsPlan Plan { get; } = SettingsPlan.For(JobContext.For(DemoFiles.Job("swp-101.job.yaml"), Size.Rating));

    private static IReadOnlyList<SheetRow> Pump { get; } = JobSheet.For(Plan, DemoFiles.Tern, Size, ParameterValues.Defaults(DemoFiles.Tern, Size));

    [Fact]
    public void Each_parameter_has_rank_and_reason()
    {
        foreach (var row in Pump)
        {
            row.Rank.ShouldNotBeNull();
            row.Reason.ShouldNotBeNullOrEmpty();
        }
    }

    [Theory]
    [InlineData("104", "7.50", "kW")]
    [InlineData("105", "400", "V")]
    [InlineData("106", "14.4", "A")]
    [InlineData("107", "1460", "rpm")]
    [InlineData("108", "0.83", null)]
    [InlineData("150", "50.0", "Hz")]
    [InlineData("170", "8.00", "s")]
    [InlineData("172", "12.00", "s")]
    [InlineData("190", "129", "%")]
    public void The_display_shows_what_the_technician_keys_in(string number, string display, string? unit)
    {
        var line = Pump.Single(row => row.Line.Parameter?.Number == number).Line;
        (line.Display, line.Unit).ShouldBe((display, unit));
    }

    [Fact]
    public void Settings_that_the_drive_chooses_together_share_a_row_with_the_gravest_rank()
    {
        var row = Pump.Single(row => row.Line.Parameter?.Number == "220");
        row.Line.Settings.Select(s => s.Name).ShouldBe(["run-command-source", "permitted-direction"], ignoreOrder: true);
        row.Rank.ShouldBe(Rank.Must);
        row.Reason!.ShouldContain("control.run-from");
    }

    [Fact]
    public void What_the_drive_holds_afterwards_is_the_plan_within_its_resolution()
    {
        var held = JobRehearsal.Held(Plan, DemoFiles.Tern, Size);
        held.Number(Setting.MotorRatedCurrent)!.Value.ShouldBe(14.4, 1e-9);
        held.Number(Setting.AccelerationTime)!.Value.ShouldBe(8, 0.01);
        held.Number(Setting.CurrentLimit)!.Value.ShouldBe(1.29 * 14.4, 1e-9);
        held.Choice(Setting.RunCommandSource).ShouldBe("bus");
    }

    [Fact]
    public void What_the_drive_does_not_offer_stands_at_the_end() =>
        Pump.SkipWhile(row => row.Line.Parameter is not null).ShouldAllBe(row => row.Line.Mapping == Mapping.NotOffered);
}
