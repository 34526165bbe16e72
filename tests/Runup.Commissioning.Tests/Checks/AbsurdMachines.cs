using FsCheck.Xunit;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Survey;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>Whatever a job says of its machine, operation, supply and place, every check answers.</summary>
public sealed class AbsurdMachines
{
    [Property(MaxTest = 400)]
    public void Every_check_and_the_plan_answer_for_any_figures(double[] values, int kind, int cycle) => Answers(values, kind, cycle);

    [Property(MaxTest = 400)]
    public void Every_check_and_the_plan_answer_for_figures_of_any_size_that_is_built(short[] values, int kind, int cycle) =>
        Answers(Array.ConvertAll(values, value => Math.Sign(value) * Math.Pow(10, (Math.Abs(value) % 1000 / 100.0) - 5)), kind, cycle);

    private static void Answers(double[] values, int kind, int cycle)
    {
        var place = 0;
        var job = Jobs.Pump() with
        {
            Supply = new() { Voltage = new(LineVoltage.FromVolts(Next())), Frequency = new(ElectricalFrequency.FromHertz(Next())), Phases = new(cycle) },
            Machine = new()
            {
                Load = new((LoadKind)Math.Abs(kind % 6)),
                Torque = new(Torque.FromNewtonMetres(Signed())),
                AtSpeed = new(ShaftSpeed.FromRpm(Signed())),
                Curve = [(ShaftSpeed.FromRpm(Next()), Torque.FromNewtonMetres(Signed())), (ShaftSpeed.FromRpm(Next()), Torque.FromNewtonMetres(Signed()))],
                BreakawayTorque = new(Torque.FromNewtonMetres(Signed())),
                Inertia = new(Inertia.FromKilogramSquareMetres(Next())),
                GearRatio = new(Ratio.FromValue(Next())),
                GearEfficiency = new(Efficiency.FromRatio(Next())),
                GearEfficiencyBack = new(Efficiency.FromRatio(Next())),
                Mass = new(Mass.FromKilograms(Next())),
                DrumDiameter = new(Length.FromMetres(Signed())),
                LargestSpeed = new(ShaftSpeed.FromRpm(Signed())),
            },
            Operation = new()
            {
                MinimumFrequency = new(ElectricalFrequency.FromHertz(Next())),
                MaximumFrequency = new(ElectricalFrequency.FromHertz(Next())),
                Acceleration = new(Duration.FromSeconds(Next())),
                Deceleration = new(Duration.FromSeconds(Next())),
                StopsPerHour = new(Ratio.FromValue(Next())),
                Cycle = [new(new(Duration.FromSeconds(Next())), new(ShaftSpeed.FromRpm(Signed())), new(Torque.FromNewtonMetres(Signed())))],
            },
            Place = new() { Ambient = new(Temperature.FromKelvin(Next())), Altitude = new(Length.FromMetres(Signed())) },
        };
        job = job.With((DriveSurvey d) => d with
        {
            SwitchingFrequency = new(SwitchingFrequency.FromHertz(Next())),
            BrakingResistor = new(new(Resistance.FromOhms(Next())), new(ElectricalPower.FromWatts(Signed()))),
            CurrentLimit = new(LineCurrent.FromAmperes(Next())),
        });
        var context = job.Context();
        CheckList.Judge(context).Results.Count.ShouldBe(CheckList.OfJob.Count);
        MachineFigures.Of(context).ShouldNotBeNull();
        DriveFigures.Of(context).ShouldNotBeNull();
        SettingsPlan.For(context).Lines.ShouldNotBeEmpty();

        double Signed() => values.Length > 0 && values[place++ % values.Length] is var value && double.IsFinite(value) ? value : 0;
        double Next() => Math.Abs(Signed());
    }
}
