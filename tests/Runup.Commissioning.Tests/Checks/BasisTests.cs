using Runup.Commissioning.Checks;

namespace Runup.Commissioning.Tests.Checks;

public sealed class BasisTests
{
    [Fact]
    public void A_limit_from_memory_never_makes_a_blocker() =>
        Should.Throw<ArgumentException>(() => Finding(Severity.Blocker, new Basis.Standard("IEC 60204-1", Recalled: true)));

    [Fact]
    public void A_rule_of_thumb_never_makes_a_blocker() =>
        Should.Throw<ArgumentException>(() => Finding(Severity.Blocker, new Basis.CommonPractice("about so")));

    [Fact]
    public void Both_may_caution()
    {
        Finding(Severity.Caution, new Basis.Standard("IEC 60204-1", Recalled: true)).Basis.FromMemory.ShouldBeTrue();
        Finding(Severity.Caution, new Basis.CommonPractice("about so")).Basis.ToString().ShouldStartWith("common practice, no source");
    }

    [Fact]
    public void What_holds_up_a_stage_holds_up_all_after_it()
    {
        var verdict = Verdict.Of([Finding(Severity.Blocker, new Basis.JobData("x")), new CheckResult.Satisfied("b", "well")]);
        verdict.MayBeEntered.ShouldBeTrue();
        verdict.MayBeBumped.ShouldBeFalse();
        verdict.CoupledBlockedBy.ShouldBe(["a"]);
    }

    [Fact]
    public void Cautions_and_undecided_checks_hold_up_nothing() =>
        Verdict.Of([Finding(Severity.Caution, new Basis.JobData("x")), new CheckResult.Undecided("b", "y", "z")]).BlockedBy.ShouldBeEmpty();

    [Fact]
    public void Every_check_has_an_id_of_its_own() =>
        CheckList.OfJob.Select(check => check.Id).ShouldBeUnique();

    [Fact]
    public void Every_id_is_of_the_closed_list() =>
        CheckList.OfJob.Select(check => check.Id).Except(FindingIds.All).ShouldBeEmpty();

    private static CheckResult.Violated Finding(Severity severity, Basis basis) =>
        new("a", severity, Stage.Bump, basis) { Title = "t", Explanation = "e", Remedy = "r" };
}
