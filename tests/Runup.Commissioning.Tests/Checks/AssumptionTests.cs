using Runup.Commissioning.Survey;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

public sealed class AssumptionTests
{
    [Fact]
    public void What_the_surveyor_assumed_is_listed() =>
        Jobs.Pump().With((MachineSurvey m) => m with { Inertia = new(Inertia.FromKilogramSquareMetres(0.12), Provenance.Assumed, Note: "impeller of a sister pump", AsWritten: "0.12 kg·m²") })
            .Context().Assumptions.ShouldContain(a => a.What == "machine.inertia" && a.Value == "0.12 kg·m²" && a.Source.Contains("sister pump"));

    [Fact]
    public void An_inertia_of_the_rotor_that_nobody_knows_is_estimated_and_listed()
    {
        var job = Jobs.Pump() with { Motor = Jobs.Pump().Motor with { Inertia = null } };
        var assumption = job.Context().Assumptions.Single(a => a.What.StartsWith("motor inertia", StringComparison.Ordinal));
        assumption.Source.ShouldBe("common practice, no source");

        // The 18.5 kW four-pole motor of the Modelica Standard Library (IMC_withLosses) has 0.12 kg·m² in its measured set; the estimate is within a factor of two.
        var library = job.With((PlateSurvey _) => Plates.Of("18.5 kW", 400, 32.85, 50, 1462.5, 4, 0.898, 90.49)).Context(22);
        library.Machine.Machine!.MotorInertia.KilogramSquareMetres.ShouldBeInRange(0.06, 0.24);
    }

    [Fact]
    public void A_gear_without_efficiency_is_assumed_and_listed() =>
        Jobs.Screw().With((MachineSurvey m) => m with { GearEfficiency = null }).Context(2.2).Assumptions.ShouldContain(a => a.What == "gear efficiency");

    [Fact]
    public void A_job_that_says_everything_leaves_only_what_no_plate_tells() =>
        Jobs.Pump().Context().Assumptions.ShouldAllBe(a => a.What.Contains("loss") || a.What.Contains("leakage") || a.What.Contains("gave way") || a.What.Contains("off its plate") || a.What.Contains("the iron takes"));
}
