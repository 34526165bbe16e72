using Runup.Commissioning.Plan;
using Runup.Commissioning.Rehearsal;
using Runup.Commissioning.Tests.Checks;
using Runup.Dynamics;

namespace Runup.Commissioning.Tests.Rehearsal;

/// <summary>What a second cage and saturated iron change in a rehearsal: the measure by which the plain model is the one that is used unless asked otherwise.</summary>
public sealed class DetailTests
{
    [Theory]
    [InlineData("swp-101.job.yaml")]
    [InlineData("fs-301.job.yaml")]
    public void A_drive_starts_two_cages_as_it_starts_the_one_that_is_equal_at_rated_slip(string job)
    {
        var plain = Rehearse(job, null);
        var both = Rehearse(job, new PlantDetail());

        both.LargestMeanCurrentA.ShouldBe(plain.LargestMeanCurrentA, 0.003 * plain.LargestMeanCurrentA);
        both.TimeToSpeedS!.Value.ShouldBe(plain.TimeToSpeedS!.Value, 0.02);
    }

    [Fact]
    public void A_boost_that_takes_the_iron_beyond_its_flux_shows_only_where_the_iron_saturates()
    {
        var plain = Rehearse("fs-301.job.yaml", null);
        var saturated = Rehearse("fs-301.job.yaml", RehearsalSystem.UsualDetail);

        saturated.LargestMeanCurrentA.ShouldBeGreaterThan(1.1 * plain.LargestMeanCurrentA);
        saturated.TimeToSpeedS!.Value.ShouldBeGreaterThan(plain.TimeToSpeedS!.Value + 0.3);
    }

    private static RehearsalResult Rehearse(string file, PlantDetail? detail)
    {
        var context = DemoFiles.Context(file);
        var profile = DemoFiles.ProfileOf(context.Job);
        var size = profile.FindSize(context.Job.Drive.Size.Value)!;
        return JobRehearsal.Of(context, SettingsPlan.For(context), profile, size, detail: detail, cancellation: TestContext.Current.CancellationToken).ShouldBeOfType<RehearsalOutcome.Ran>().Result;
    }
}
