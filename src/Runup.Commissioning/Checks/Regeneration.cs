using Runup.Engineering;
using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Mechanics;
using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>The most that a load which drives its motor brings to the DC bus in steady running.</summary>
/// <remarks>P = T_load·ω through the gear (η_back), less the losses of motor and drive, over twenty frequencies up to the highest. Validity: as <see cref="SteadySpeed"/>.</remarks>
/// <param name="AtShaft">Power that the machine gives to the motor's shaft.</param>
/// <param name="AtBus">What is left of it at the bus; zero where motor and drive lose as much.</param>
/// <param name="Frequency">Output frequency at which it is so.</param>
/// <param name="IsHeld">Whether the motor holds the load at every frequency.</param>
[Source("common-practice", "power balance of steady braking")]
public sealed record Regeneration(ShaftPower AtShaft, ElectricalPower AtBus, ElectricalFrequency Frequency, bool IsHeld)
{
    private const int Places = 20;

    internal static Regeneration? Of(IReadOnlyList<DrivenMachine> ways, MotorOnDrive motor, ElectricalFrequency highest, ElectricalPower driveLoss)
    {
        var all = from machine in ways
                  from place in Enumerable.Range(1, Places)
                  let frequency = ElectricalFrequency.FromHertz(highest.Hertz * place / Places)
                  let found = At(machine, motor, frequency, driveLoss)
                  where found is not null
                  select found;
        var places = all.ToList();
        return places.Count == 0 ? null : places.MaxBy(place => place.AtBus.Watts)! with { IsHeld = places.TrueForAll(place => place.IsHeld) };
    }

    private static Regeneration? At(DrivenMachine machine, MotorOnDrive motor, ElectricalFrequency frequency, ElectricalPower driveLoss)
    {
        // A load that asks for torque at synchronous speed drives at none that the motor has at this frequency.
        var synchronous = ShaftSpeed.FromRadiansPerSecond(frequency.SynchronousSpeed(motor.Circuit.Poles).RadiansPerSecond);
        if (machine.LoadTorque(synchronous).NewtonMetres >= 0)
        {
            return null;
        }

        var steady = SteadySpeed.At(machine, motor.Circuit, motor.Characteristic, frequency);
        var speed = steady?.Speed ?? synchronous;
        var shaft_W = -machine.LoadTorque(speed).NewtonMetres * speed.RadiansPerSecond;
        return shaft_W <= 0
            ? null
            : new(
                ShaftPower.FromWatts(shaft_W),
                ElectricalPower.FromWatts(Math.Max(0, (steady is null ? shaft_W : -steady.Input.Watts) - driveLoss.Watts)),
                frequency,
                steady is not null);
    }
}
