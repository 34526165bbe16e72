using FsCheck.Xunit;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Survey;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>Whatever a plate says, every check answers.</summary>
public sealed class AbsurdPlates
{
    [Property(MaxTest = 100)]
    public void Every_check_and_the_plan_answer_for_any_figures(double a, double b, double c, double d, double e, int poles, double f, double g)
    {
        var plate = new PlateSurvey
        {
            Output = new(ShaftPower.FromWatts(Any(a))),
            Voltage = new(LineVoltage.FromVolts(Math.Abs(Any(b)))),
            Current = new(LineCurrent.FromAmperes(Math.Abs(Any(c)))),
            Frequency = new(ElectricalFrequency.FromHertz(Math.Abs(Any(d)))),
            Speed = new(ShaftSpeed.FromRpm(Any(e))),
            Poles = new(poles),
            PowerFactor = new(PowerFactor.FromRatio(Math.Abs(Any(f)))),
            Efficiency = new(Efficiency.FromRatio(Math.Abs(Any(g)))),
        };
        Answers(plate);
        Answers(plate with { PowerFactor = null, Efficiency = null, Poles = null });
    }

    [Property(MaxTest = 100)]
    public void Every_check_and_the_plan_answer_for_figures_near_a_sound_plates(byte a, byte b, byte c, byte d, byte e, byte poles, byte f, byte g)
    {
        static double Factor(byte x) => Math.Pow(4, (x - 127.5) / 127.5);
        var plate = Plates.Of("7.5 kW", 400 * Factor(b), 14.4 * Factor(c), 50 * Factor(d), 1460 * Factor(e), poles % 12, Math.Min(1, 0.83 * Factor(f)), Math.Min(99, 90 * Factor(g)));
        Answers(plate with { Output = new(ShaftPower.FromWatts(7500 * Factor(a))) });
    }

    [Fact]
    public void Zeros_are_answered() => Answers(new PlateSurvey
    {
        Output = new(default),
        Voltage = new(default),
        Current = new(default),
        Frequency = new(default),
        Speed = new(default),
    });

    private static void Answers(PlateSurvey plate)
    {
        foreach (var job in (Job[])[Jobs.Pump(), Jobs.Screw(), Jobs.Hoist()])
        {
            var context = JobContext.For(job with { Motor = job.Motor with { Plate = plate } }, Ratings.Of(7.5));
            CheckList.Judge(context).Results.Count.ShouldBe(CheckList.OfJob.Count);
            MachineFigures.Of(context).ShouldNotBeNull();
            SettingsPlan.For(context).Lines.ShouldNotBeEmpty();
        }
    }

    private static double Any(double value) => double.IsFinite(value) ? value : 0;
}
