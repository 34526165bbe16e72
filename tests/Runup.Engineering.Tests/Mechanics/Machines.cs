using Runup.Engineering.Loads;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Mechanics;

/// <summary>Machines for tests; the motor's rotor has 0.035 kg·m² where it has any.</summary>
internal static class Machines
{
    internal static DrivenMachine Pump { get; } = new()
    {
        Load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(42), ShaftSpeed.FromRpm(1460)),
        MachineInertia = Inertia.FromKilogramSquareMetres(0.12),
        MotorInertia = Inertia.FromKilogramSquareMetres(0.035),
        Breakaway = Torque.FromNewtonMetres(8),
    };

    internal static DrivenMachine Flywheel(double inertia) => new()
    {
        Load = new LoadCurve.Constant(Torque.FromNewtonMetres(0)),
        MachineInertia = Inertia.FromKilogramSquareMetres(inertia),
        MotorInertia = Inertia.FromKilogramSquareMetres(0),
    };

    internal static DrivenMachine Constant(double torque) => Pump with { Load = new LoadCurve.Constant(Torque.FromNewtonMetres(torque)), Breakaway = null };
}
