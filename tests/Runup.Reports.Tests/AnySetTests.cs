using FsCheck.Xunit;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Survey;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Reports.Handover;
using Runup.Reports.Tests.Example;

namespace Runup.Reports.Tests;

/// <summary>Whatever set it is, there is a report.</summary>
public sealed class AnySetTests
{
    [Property(MaxTest = 60)]
    public void Whatever_the_plate_says_there_is_a_report(double a, double b, double c, double d, double e) => Report(ExampleJob.Pump() with
    {
        Motor = new()
        {
            Plate = new()
            {
                Output = new(ShaftPower.FromWatts(Any(a))),
                Voltage = new(LineVoltage.FromVolts(Math.Abs(Any(b)))),
                Current = new(LineCurrent.FromAmperes(Math.Abs(Any(c)))),
                Frequency = new(ElectricalFrequency.FromHertz(Math.Abs(Any(d)))),
                Speed = new(ShaftSpeed.FromRpm(Any(e))),
            },
        },
    });

    [Theory]
    [InlineData(MotorKind.PermanentMagnet)]
    [InlineData(MotorKind.SynchronousReluctance)]
    [InlineData(MotorKind.Unknown)]
    public void A_motor_of_another_kind_is_served(MotorKind kind)
    {
        var pump = ExampleJob.Pump();
        var text = Report(pump with { Motor = pump.Motor with { Kind = new(kind) } });

        text.ShouldContain("no circuit was worked out from the plate");
        text.Contains("The terminals of this motor are live while its shaft turns", StringComparison.Ordinal).ShouldBe(kind == MotorKind.PermanentMagnet);
    }

    [Theory]
    [InlineData(LoadKind.Hoisting)]
    [InlineData(LoadKind.ConstantPower)]
    [InlineData(LoadKind.Linear)]
    [InlineData(LoadKind.Table)]
    public void A_machine_of_any_kind_is_served(LoadKind load)
    {
        var pump = ExampleJob.Pump();
        Report(pump with { Machine = pump.Machine with { Load = new(load), Mass = new(Mass.FromSi(500)), DrumDiameter = new(Length.FromSi(0.3)) } }).ShouldContain("6 Motor, load and voltage");
    }

    private static string Report(Job job)
    {
        var context = JobContext.For(job, ExampleDrive.Size.Rating);
        var plan = SettingsPlan.For(context);
        return PlainText.Of(HandoverReport.Write(HandoverModel.Of(ExampleHandover.Sources(ExampleRecord.Whole(), CheckList.Judge(context)) with
        {
            Context = context,
            Plan = plan,
            Sheet = Sheet.For(ExampleDrive.Tern, ExampleDrive.Size, plan.Values, ParameterValues.Defaults(ExampleDrive.Tern, ExampleDrive.Size)),
        })));
    }

    private static double Any(double value) => double.IsFinite(value) ? value : 0;
}
