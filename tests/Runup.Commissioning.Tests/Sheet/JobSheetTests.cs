using Runup.Commissioning.Plan;
using Runup.Commissioning.Sheet;
using Runup.Commissioning.Tests.Checks;
using Runup.Commissioning.Checks;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Sheet;

public sealed class JobSheetTests
{
    private static JobSheet Pump { get; } = Of();

    [Fact]
    public void Each_parameter_has_rank_and_reason()
    {
        foreach (var row in Pump.Rows)
        {
            row.Rank.ShouldNotBeNull();
            row.Reason.ShouldNotBeNullOrEmpty();
            row.SettingNames.ShouldNotBeNullOrEmpty();
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
        var line = Pump.Rows.Single(row => row.Line.Parameter?.Number == number).Line;
        (line.Display, line.Unit).ShouldBe((display, unit));
    }

    [Fact]
    public void Settings_that_the_drive_chooses_together_share_a_row_with_the_gravest_rank()
    {
        var row = Pump.Rows.Single(row => row.Line.Parameter?.Number == "220");
        row.Line.Settings.Select(s => s.Name).ShouldBe(["run-command-source", "permitted-direction"], ignoreOrder: true);
        row.Rank.ShouldBe(Rank.Must);
        row.Reason!.ShouldContain("run-command-source:");
    }

    [Fact]
    public void What_the_drive_holds_afterwards_is_the_plan_within_its_resolution()
    {
        Pump.Held.Number(Setting.MotorRatedCurrent)!.Value.ShouldBe(14.4, 1e-9);
        Pump.Held.Number(Setting.AccelerationTime)!.Value.ShouldBe(8, 0.01);
        Pump.Held.Number(Setting.CurrentLimit)!.Value.ShouldBe(1.29 * 14.4, 1e-9);
        Pump.Held.Choice(Setting.RunCommandSource).ShouldBe("bus");
    }

    [Fact]
    public void What_the_drive_does_not_offer_stands_at_the_end() =>
        Pump.Rows.SkipWhile(row => row.Line.Parameter is not null).ShouldAllBe(row => row.Line.Mapping == Mapping.NotOffered);

    private static JobSheet Of()
    {
        var size = DemoFiles.TernSize("7.5-400");
        return JobSheet.For(SettingsPlan.For(JobContext.For(DemoFiles.Job("swp-101.job.yaml"), size.Rating)), DemoFiles.Tern, size);
    }
}
