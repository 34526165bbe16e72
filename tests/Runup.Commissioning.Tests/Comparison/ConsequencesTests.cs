using Runup.Commissioning.Checks;
using Runup.Commissioning.Comparison;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Tests.Checks;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Comparing;

public sealed class ConsequencesTests
{
    private static readonly JobContext Blower = DemoFiles.Context("ab-201.job.yaml");
    private static readonly JobContext Pump = DemoFiles.Context("swp-101.job.yaml");

    [Fact]
    public void A_deceleration_that_is_too_short_says_at_which_frequency_it_trips()
    {
        var settings = SettingsPlan.For(Blower).Values.With(Setting.OvervoltageControl, "off");
        Only(Blower, Entered(Blower, settings), Entered(Blower, settings.With(Setting.DecelerationTime, 3)))
            .ShouldMatch(@"^with 3\.\d\d s: less than the 12\.8 s that the job needs; trips on overvoltage at 4\d(\.\d)? Hz, stopping$");
    }

    [Fact]
    public void A_deceleration_that_the_drive_stretches_says_so() =>
        Of(Blower, Setting.DecelerationTime, 3).ShouldEndWith("stops in 12.7 s instead of 30.5 s, stretched by the overvoltage control");

    [Fact]
    public void The_same_is_said_of_the_left_side_where_it_is_the_right_that_runs_well()
    {
        var (plan, other) = (Planned(Blower), With(Blower, Setting.DecelerationTime, 3));
        Only(Blower, other, plan).ShouldStartWith("with 3.");
    }

    [Fact]
    public void A_machine_that_would_turn_too_fast_is_named() =>
        Of(Pump, Setting.MaximumFrequency, 75).ShouldContain("with 75.0 Hz: turns the machine at up to 2210 rpm; it is for 1800 rpm");

    [Fact]
    public void A_limit_that_holds_the_motor_short_of_its_speed_is_named() =>
        Of(Pump, Setting.CurrentLimit, 10).ShouldMatch(@"does not carry the load, which takes 12\.\d A; does not come to speed: it gets to \d\d(\.\d)? Hz and the current limit holds it there$");

    [Fact]
    public void An_overload_current_above_the_plate_says_how_much_flows_without_end() =>
        Of(Pump, Setting.MotorOverloadCurrent, 18).ShouldContain("lets 125 % of the plate's 14.4 A flow without end");

    [Fact]
    public void Voltage_over_frequency_is_said_as_flux() =>
        Of(Pump, Setting.BaseFrequency, 60).ShouldContain("with 60.0 Hz: 83.3 % of the plate's flux: of the breakdown torque 69.4 % is left");

    [Theory]
    [InlineData("motor-thermal-sensor", "none", "the ptc in the winding is not looked at")]
    [InlineData("bus-loss-action", "none", "it runs on when the bus is silent")]
    [InlineData("restart-after-power-loss", "on", "it starts by itself when power returns")]
    [InlineData("output-phase-loss", "off", "a lost motor phase does not stop it")]
    [InlineData("run-command-source", "terminals", "run commands come from terminals, the job says bus")]
    public void A_choice_that_takes_a_protection_away_says_so(string setting, string choice, string words)
    {
        var plan = Planned(Pump);
        var other = Entered(Pump, SettingsPlan.For(Pump).Values.With(Setting.Find(setting)!, choice));
        Only(Pump, plan, other, setting).ShouldContain(words);
    }

    [Fact]
    public void Equal_states_have_no_consequences_and_no_run() =>
        Consequences.Of(Pump, StateComparison.Of(Planned(Pump), Planned(Pump))).ShouldSatisfyAllConditions(c => c.OfEach.ShouldBeEmpty(), c => c.Left.ShouldBeNull());

    [Fact]
    public void A_set_whose_motor_is_not_known_has_no_run_and_still_says_what_the_plate_tells()
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "demo", "ostrevad", "swp-101.job.yaml"));
        var job = DemoFiles.Text(string.Join('\n', text.Split('\n').Where(l => !l.TrimStart().StartsWith("inertia:", StringComparison.Ordinal))));
        var context = JobContext.For(job, Size(Pump).Rating);
        var consequences = Consequences.Of(context, StateComparison.Of(Planned(Pump), With(Pump, Setting.MotorOverloadCurrent, 18)));
        (consequences.Left, consequences.OfEach.ShouldHaveSingleItem()).ShouldBe((null, "with 18.0 A: lets 125 % of the plate's 14.4 A flow without end"));
    }

    private static string Of(JobContext context, Setting setting, double si) => Only(context, Planned(context), With(context, setting, si), setting.Name);

    private static string Only(JobContext context, HeldState left, HeldState right, string? setting = null)
    {
        var comparison = StateComparison.Of(left, right);
        var words = Consequences.Of(context, comparison).OfEach;
        return comparison.Differences.Zip(words).Where(d => setting is null || d.First.Setting?.Name == setting).ShouldHaveSingleItem().Second.ShouldNotBeNull();
    }

    private static DriveSize Size(JobContext context) => DemoFiles.ProfileOf(context.Job).FindSize(context.Job.Drive.Size.Value)!;

    private static HeldState Planned(JobContext context) => Entered(context, SettingsPlan.For(context).Values);

    private static HeldState With(JobContext context, Setting setting, double si) => Entered(context, SettingsPlan.For(context).Values.With(setting, si));

    private static HeldState Entered(JobContext context, SettingSet settings)
    {
        var (profile, size) = (DemoFiles.ProfileOf(context.Job), Size(context));
        var factory = ParameterValues.Defaults(profile, size);
        return new(profile, size, Profiles.Sheet.After(profile, size, Profiles.Sheet.For(profile, size, settings, factory), factory));
    }
}
