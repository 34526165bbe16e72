using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Checks;

public sealed class ControlCases
{
    [Theory]
    [InlineData("1")]
    [InlineData("21")]
    public void An_explosive_atmosphere_holds_up_everything_by_rule(string zone)
    {
        var report = (Jobs.Pump() with { Place = Jobs.Pump().Place with { ExplosiveZone = new(zone) } }).Judge();
        report.Verdict.EntryBlockedBy.ShouldBe(["motor.explosive-atmosphere"]);
    }

    [Fact]
    public void A_bus_that_runs_the_drive_without_time_out()
    {
        var off = (Jobs.Pump() with { Bus = Jobs.Pump().Bus with { TimeOut = new(default) } }).Judge();
        off.Of("control.bus-loss").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Blocker);
        var unsaid = (Jobs.Pump() with { Bus = Jobs.Pump().Bus with { TimeOut = null } }).Judge();
        unsaid.Of("control.bus-loss").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Caution);
        var held = (Jobs.Pump() with { Bus = Jobs.Pump().Bus with { OnLoss = new("hold") } }).Judge();
        held.Of("control.bus-loss").ShouldBeOfType<CheckResult.Violated>();
    }

    [Fact]
    public void Restart_by_itself_is_a_caution_from_memory()
    {
        var finding = (CheckResult.Violated)Jobs.Pump().With((OperationSurvey o) => o with { RestartAfterPowerLoss = new(true) }).Judge().Of("control.restart");
        finding.Severity.ShouldBe(Severity.Caution);
        finding.Basis.FromMemory.ShouldBeTrue();
    }

    [Fact]
    public void A_fixed_frequency_is_asked_for_and_held_against_the_range()
    {
        Fixed(null).ShouldBeOfType<CheckResult.Undecided>().Missing.ShouldContain("control.fixed-frequency-1");
        Fixed(35).ShouldBeOfType<CheckResult.Satisfied>();
        Fixed(60).ShouldBeOfType<CheckResult.Violated>().Limit.ShouldBe(50);
        Fixed(10).ShouldBeOfType<CheckResult.Violated>().Limit.ShouldBe(20);
    }

    [Fact]
    public void Terminals_that_are_stated_must_have_one_that_starts_it()
    {
        ByTerminals("enable").ShouldBeOfType<CheckResult.Violated>().Title.ShouldBe("No terminal starts it");
        ByTerminals("run-forward").ShouldBeOfType<CheckResult.Satisfied>();
        ByTerminals(null).ShouldBeOfType<CheckResult.Satisfied>();
    }

    private static CheckResult Fixed(double? hertz) => (Jobs.Pump() with
    {
        Control = Jobs.Pump().Control with
        {
            ReferenceFrom = new("fixed"),
            FixedFrequencies = hertz is { } f ? [new(Setting.FixedFrequency1, new(ElectricalFrequency.FromHertz(f)))] : [],
        },
    }).Judge().Of("control.run-source");

    private static CheckResult ByTerminals(string? function) => (Jobs.Pump() with
    {
        Control = Jobs.Pump().Control with
        {
            RunFrom = new("terminals"),
            Terminals = function is null ? null : new([new(Setting.DigitalInput1, new(function))]),
        },
    }).Judge().Of("control.run-source");

    [Fact]
    public void A_bus_that_is_not_there() =>
        (Jobs.Pump() with { Bus = new() { Kind = new("none") } }).Judge().Of("control.run-source").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Blocker);

    [Fact]
    public void A_source_that_nobody_names_is_undecided() =>
        (Jobs.Pump() with { Control = new() }).Judge().Of("control.run-source").ShouldBeOfType<CheckResult.Undecided>();

    [Theory]
    [InlineData(0, 50, null)]
    [InlineData(0, 40, Severity.Caution)]
    [InlineData(0, 60, Severity.Caution)]
    [InlineData(50, 0, Severity.Blocker)]
    public void An_analogue_input_is_scaled_to_the_highest_frequency(double low, double high, Severity? severity)
    {
        var job = Jobs.Pump() with
        {
            Control = new()
            {
                RunFrom = new("terminals"),
                ReferenceFrom = new("analogue-1"),
                Analogue1 = new(new("4..20 mA"), new(ElectricalFrequency.FromHertz(low)), new(ElectricalFrequency.FromHertz(high)), new("stop")),
            },
        };
        (job.Judge().Of("control.analogue-scaling") as CheckResult.Violated)?.Severity.ShouldBe(severity!.Value);
        (job.Judge().Of("control.analogue-scaling") is CheckResult.Violated).ShouldBe(severity is not null);
    }

    [Theory]
    [InlineData("4..20 mA", "stop", null)]
    [InlineData("4..20 mA", "fixed", null)]
    [InlineData("4..20 mA", null, Severity.Note)]
    [InlineData("4..20 mA", "hold", Severity.Caution)]
    [InlineData("4..20 mA", "off", Severity.Caution)]
    [InlineData("0..10 V", "hold", null)]
    public void A_signal_with_a_live_zero_is_watched_for_a_broken_wire(string signal, string? onLoss, Severity? severity)
    {
        var job = Jobs.Pump() with
        {
            Control = new()
            {
                RunFrom = new("terminals"),
                ReferenceFrom = new("analogue-1"),
                Analogue1 = new(new(signal), new(ElectricalFrequency.FromHertz(0)), new(ElectricalFrequency.FromHertz(50)), onLoss is null ? null : new(onLoss)),
            },
        };
        (job.Judge().Of("control.analogue-scaling") as CheckResult.Violated)?.Severity.ShouldBe(severity!.Value);
        (job.Judge().Of("control.analogue-scaling") is CheckResult.Violated).ShouldBe(severity is not null);
    }

    [Fact]
    public void A_cycle_that_runs_backwards_where_only_forward_is_permitted()
    {
        var cycle = new CyclePart(new(Duration.FromSeconds(10)), new(ShaftSpeed.FromRpm(-700)), new(Torque.FromNewtonMetres(5)));
        Jobs.Pump().With((OperationSurvey o) => o with { Cycle = [cycle] }).Judge().Of("control.direction").ShouldBeOfType<CheckResult.Violated>();
    }

    [Fact]
    public void Two_motors_take_twice_the_current()
    {
        var report = (Jobs.Pump() with { Motor = Jobs.Pump().Motor with { Count = new(2) } }).Judge();
        report.Of("control.several-motors").ShouldBeOfType<CheckResult.Violated>();
        ((CheckResult.Violated)report.Of("drive.current")).Limit.ShouldBe(28.8);
    }
}
