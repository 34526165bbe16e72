using Runup.Engineering.Loads;
using Runup.Quantities;

namespace Runup.Outside.Tests.Engineering;

/// <summary>Textbook examples of inertia and torque reflected to a motor. Read in public transcriptions of the books' examples with their executed output.</summary>
public sealed class LineMotionExamplesTests
{
    // The books take g as 9.81 m/s², the product the standard 9.80665.
    private const double GravityOfTheBooks = 0.0005;
    private static readonly Efficiency Lossless = Efficiency.FromRatio(1);

    [Fact]
    public void A_geared_load_and_a_lifted_mass_on_one_motor()
    {
        // Dubey, Ex. 2.1 p. 16: 1420 rpm, J .2; gear .1 (efficiency .9) to 10 kg·m² and 10 N·m; 1000 kg lifted at 1.5 m/s (efficiency .85): .40 kg·m² (re-solved .4018), 117.53 N·m.
        var speed = ShaftSpeed.FromRpm(1420);
        var geared = Machine(0.2, 10, 10, 10, 0.9);
        var hoist = new LinearMotion(LinearSpeed.FromMetresPerSecond(1.5), speed);

        (geared.TotalInertia.KilogramSquareMetres + hoist.Reflected(Mass.FromKilograms(1000)).KilogramSquareMetres).ShouldBe(0.4018, 0.00005);
        (geared.LoadTorque(speed).NewtonMetres + hoist.Lifting(Mass.FromKilograms(1000), default, Efficiency.FromRatio(0.85)).NewtonMetres)
            .ShouldBe(117.53, GravityOfTheBooks * 117.53);
    }

    [Fact]
    public void A_loaded_belt()
    {
        // Gupta & Singhal, Ex. 3.6 p. 36: belt 1.2 m/s, 100 t/h, 200 m, motor 1200 rpm, J .1, accelerated in 8 s: inertia of the load .4222 kg·m², torque 8.20 N·m.
        var (line, shaft) = (LinearSpeed.FromMetresPerSecond(1.2), ShaftSpeed.FromRpm(1200));
        var onBelt = LinearMotion.OnConveyor(Mass.FromKilograms(100_000), Duration.FromSeconds(3600), Length.FromMetres(200), line);
        var inertia = new LinearMotion(line, shaft).Reflected(onBelt);
        var machine = Machine(0.1, inertia.KilogramSquareMetres, 0, 1, 1);

        inertia.KilogramSquareMetres.ShouldBe(0.4222, 0.0001);
        machine.TorqueFor(shaft, ShaftSpeed.FromRpm(1200 / 8.0)).NewtonMetres.ShouldBe(8.20, 0.005);
    }

    [Fact]
    public void A_mass_pulled_along_a_line()
    {
        // Gupta & Singhal, Ex. 3.10 p. 39: J .4 + .6, 100 kg at 10 m/s, 1440 rpm, friction 1.2 N/kg, rotary 1.5 N·m: 9.46 N·m (re-solved 9.458). The printed J of 5.314 multiplies the mass by g and
        // is wrong: corrected 1.440.
        var motion = new LinearMotion(LinearSpeed.FromMetresPerSecond(10), ShaftSpeed.FromRpm(1440));

        (0.4 + 0.6 + motion.Reflected(Mass.FromKilograms(100)).KilogramSquareMetres).ShouldBe(1.440, 0.0005);
        (1.5 + motion.Pulling(1.2 * 100, Lossless).NewtonMetres).ShouldBe(9.458, 0.0005);
    }

    [Fact]
    public void A_hoist_with_a_counterweight()
    {
        // Gupta & Singhal, Ex. 1.1 p. 10: 5500 kg in a cage of 500 kg, counterweight 3000 kg, 50 m up in 1.5 min, efficiency .8: 20.44 kW; with a motor of .85 1.102 kWh for a double trip, the cage
        // going down empty.
        var shaft = ShaftSpeed.FromRpm(1000);
        var motion = new LinearMotion(LinearSpeed.FromMetresPerSecond(50 / 90.0), shaft);
        var efficiency = Efficiency.FromRatio(0.8);
        var up = motion.Lifting(Mass.FromKilograms(6000), Mass.FromKilograms(3000), efficiency).PowerAt(shaft).Watts;

        // Going down the counterweight is what is lifted.
        var down = motion.Lifting(Mass.FromKilograms(3000), Mass.FromKilograms(500), efficiency).PowerAt(shaft).Watts;

        up.ShouldBe(20_440, GravityOfTheBooks * 20_440);
        ((up + down) / 0.85 * 90 / 3.6e6).ShouldBe(1.102, 0.0005);
    }

    private static DrivenMachine Machine(double rotor, double inertia, double torque, double ratio, double efficiency) => new()
    {
        Load = new LoadCurve.Constant(Torque.FromNewtonMetres(torque)),
        MotorInertia = Inertia.FromKilogramSquareMetres(rotor),
        MachineInertia = Inertia.FromKilogramSquareMetres(inertia),
        GearRatio = ratio,
        GearEfficiency = Efficiency.FromRatio(efficiency),
    };
}
