using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Records;
using Runup.Profiles;
using Runup.Quantities;
using Runup.SimulatedDrive;

namespace Runup.Acceptance.Tests.OverTheWire;

/// <summary>What lifts is run at its own panel; on the wire nothing is written during its first run.</summary>
[Collection("real time")]
public sealed class HoistTests
{
    [Fact]
    public async Task The_hoist_is_only_read_while_a_person_runs_it_at_its_panel()
    {
        await using var site = new WireSite("tern", "gh-501", "5.5-400");
        var person = new TestPerson(site.Host)
        {
            StopsAt = "",
            StopsBefore = "own-control-37.5-hz",
            Does = async thing =>
            {
                if (thing is { What: "steady-from-own-control", Step: "own-control-12.5-hz" or "own-control-25-hz" })
                {
                    var hertz = thing.Step.Contains("12.5", StringComparison.Ordinal) ? 12.5 : 25;
                    site.Host.Drive.RunAtPanel(ElectricalFrequency.FromHertz(hertz), Rotation.Forward).ShouldBeOfType<PanelAnswer.Followed>();
                    await Task.Delay(TimeSpan.FromSeconds(2), TestContext.Current.CancellationToken);
                }
            },
        };
        (await site.Enter(person)).Failed.ShouldBeEmpty();
        var writesOfTheEntry = site.Writes().Count;

        var report = await site.FirstRun(person);
        report.Ending.ShouldBeOfType<FirstRunEnding.RefusedForSafety>().Why.ShouldContain("the test ends here");
        foreach (var step in (string[])["own-control-12.5-hz", "own-control-25-hz"])
        {
            var read = report.Steps.Single(s => s.Step == step);
            read.Outcome.ShouldBe("passed");
            read.Readings.Count(r => r.Within == true).ShouldBe(6);
        }

        report.RunSource.ShouldBe("panel");
        site.Writes().Count.ShouldBe(writesOfTheEntry, "nothing at all is written while it is run from its own control");
        site.ControlWords().ShouldBeEmpty();
        site.Host.Drive.EnableWordsSeen.ShouldBe(0);
        var record = await site.Records.Of("GH-501", TestContext.Current.CancellationToken);
        record.Select(r => r.Body).OfType<RecordBody.StepBegun>().ShouldAllBe(s => s.Step == "signals" || s.Step == "standstill" || s.Step.StartsWith("own-control", StringComparison.Ordinal));
        site.Host.Drive.StopAtPanel().ShouldBeOfType<PanelAnswer.Followed>();
    }
}
