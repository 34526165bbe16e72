using Runup.Commissioning.Survey;
using Runup.Engineering;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>The driven machine as the calculations take it.</summary>
public sealed record MachineReading
{
    private const double GearEfficiencyIfUnknown = 0.95;
    private const double LargestOfAnything = 1e9;

    /// <summary>The machine with the motor's rotor; null where the load's torque is not known.</summary>
    public DrivenMachine? Machine { get; init; }

    /// <summary>Which keys are missing for the load's torque; null where it is known.</summary>
    public string? Missing { get; init; }

    /// <summary>Whether the machine's inertia is known; without it no ramp can be told.</summary>
    public required bool InertiaIsKnown { get; init; }

    /// <summary>What was taken because the job does not say it.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>The machine of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="plate">The motor's plate; null where it cannot be used.</param>
    public static MachineReading Of(Job job, Nameplate? plate)
    {
        var machine = job.Machine;
        var assumptions = new List<Assumption>();
        if (BeyondWhatIsBuilt(machine) is { } beyond)
        {
            return new() { Missing = beyond, InertiaIsKnown = false, Assumptions = assumptions };
        }

        if (LoadOf(machine) is not { } load)
        {
            return new() { Missing = MissingOf(machine), InertiaIsKnown = false, Assumptions = assumptions };
        }

        var ratio = machine.GearRatio?.Value.Value is > 0 and var stated ? stated : 1;
        var forward = GearEfficiency(machine, ratio, assumptions);
        var hoisted = HoistedInertia(machine);
        return new()
        {
            Machine = new DrivenMachine
            {
                Load = load,
                MachineInertia = Inertia.FromKilogramSquareMetres((machine.Inertia?.Value.KilogramSquareMetres ?? 0) + hoisted),
                MotorInertia = job.Motor.Inertia?.Value ?? RotorInertia.Assumed(plate, assumptions),
                Breakaway = machine.BreakawayTorque?.Value,
                GearRatio = ratio,
                GearEfficiency = forward,
                GearEfficiencyBack = machine.GearEfficiencyBack?.Value ?? forward,
            },
            InertiaIsKnown = machine.Inertia is not null || hoisted > 0,
            Assumptions = assumptions,
        };
    }

    /// <summary>The first datum that no machine has, in words; arithmetic with it would mean nothing, or run away.</summary>
    private static string? BeyondWhatIsBuilt(MachineSurvey machine)
    {
        (string Key, double? Value, double Least)[] data =
        [
            ("machine.torque", machine.Torque?.Value.NewtonMetres, 0),
            ("machine.at-speed", machine.AtSpeed?.Value.RadiansPerSecond, 0),
            ("machine.breakaway-torque", machine.BreakawayTorque?.Value.NewtonMetres, 0),
            ("machine.inertia", machine.Inertia?.Value.KilogramSquareMetres, 0),
            ("machine.gear-ratio", machine.GearRatio?.Value.Value, 1e-4),
            ("machine.gear-efficiency", machine.GearEfficiency?.Value.Ratio, 1e-3),
            ("machine.gear-efficiency-back", machine.GearEfficiencyBack?.Value.Ratio, 0),
            ("machine.mass", machine.Mass?.Value.Kilograms, 0),
            ("machine.drum-diameter", machine.DrumDiameter?.Value.Metres, 0),
            .. machine.Curve?.Select(point => ("machine.curve", (double?)Math.Max(Math.Abs(point.Speed.RadiansPerSecond), Math.Abs(point.Torque.NewtonMetres)), 0.0)) ?? [],
        ];
        var beyond = Array.Find(data, datum => Math.Abs(datum.Value ?? datum.Least) is var size && (size > LargestOfAnything || size < datum.Least));
        return beyond.Key is null ? null : $"{beyond.Key} of a machine that is built";
    }

    private static LoadCurve? LoadOf(MachineSurvey machine) => machine.Load.Value switch
    {
        LoadKind.Constant when machine.Torque is { } torque => new LoadCurve.Constant(torque.Value),
        LoadKind.Linear when machine.Torque is { } torque && SpeedOf(machine) is { } speed => new LoadCurve.Linear(torque.Value, speed),
        LoadKind.Quadratic when machine.Torque is { } torque && SpeedOf(machine) is { } speed => new LoadCurve.Quadratic(torque.Value, speed),
        LoadKind.ConstantPower when machine.Torque is { } torque && SpeedOf(machine) is { } speed => new LoadCurve.ConstantPower(torque.Value, speed),
        LoadKind.Table when IsLoadTable(machine.Curve) => new LoadCurve.Table(machine.Curve!),
        LoadKind.Hoisting when machine is { Mass: { } mass, DrumDiameter: { } drum } =>
            LoadCurve.Hoisting.Of(mass.Value, drum.Value),
        _ => null,
    };

    private static ShaftSpeed? SpeedOf(MachineSurvey machine) => machine.AtSpeed?.Value is { RadiansPerSecond: > 0 } speed ? speed : null;

    private static bool IsLoadTable(IReadOnlyList<(ShaftSpeed Speed, Torque Torque)>? points) =>
        points is { Count: > 0 } && points[0].Speed.RadiansPerSecond >= 0
        && points.Zip(points.Skip(1)).All(pair => pair.First.Speed.RadiansPerSecond < pair.Second.Speed.RadiansPerSecond);

    private static string MissingOf(MachineSurvey machine) => machine.Load.Value switch
    {
        LoadKind.Constant => "machine.torque",
        LoadKind.Table => "machine.curve with speeds that ascend from zero or above",
        LoadKind.Hoisting => "machine.mass and machine.drum-diameter",
        _ => "machine.torque and machine.at-speed",
    };

    /// <summary>The hoisted mass felt at the drum.</summary>
    private static double HoistedInertia(MachineSurvey machine) =>
        machine is { Load.Value: LoadKind.Hoisting, Mass: { } mass, DrumDiameter: { } drum }
            ? LinearMotion.OfDrum(drum.Value).Reflected(mass.Value).KilogramSquareMetres
            : 0;

    private static Efficiency GearEfficiency(MachineSurvey machine, double ratio, List<Assumption> assumptions)
    {
        if (machine.GearEfficiency?.Value is { Ratio: > 0 } stated)
        {
            return stated;
        }

        if (ratio == 1)
        {
            return Efficiency.FromRatio(1);
        }

        assumptions.Add(new("gear efficiency", Said.Percent(GearEfficiencyIfUnknown), Assumption.CommonPractice, false));
        return Efficiency.FromRatio(GearEfficiencyIfUnknown);
    }
}
