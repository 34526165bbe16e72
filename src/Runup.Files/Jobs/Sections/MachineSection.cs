using Runup.Commissioning.Survey;
using Runup.Files.Jobs.Curves;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Sections;

/// <summary>Keys of the driven machine.</summary>
internal sealed class MachineSection(KeyList keys) : Section<MachineSurvey>(keys)
{
    private static readonly Need UnlessHoistingOrTable = Need.When("load", "constant", "linear", "quadratic", "constant-power");
    private static readonly Need ForHoisting = Need.When("load", "hoisting");

    private readonly Key<Datum<LoadKind>> load = keys.Choice("load", "quadratic", "shape of the load torque", Words.Loads, Need.Yes);
    private readonly Key<Datum<Torque>> torque = keys.Quantity<Torque>("torque", "42 N·m", "at the machine's shaft", Bound.Any, UnlessHoistingOrTable);
    private readonly Key<Datum<ShaftSpeed>> atSpeed = keys.Quantity<ShaftSpeed>("at-speed", "1460 rpm", "of the machine's shaft, where that torque holds", Bound.AboveZero, UnlessHoistingOrTable);
    private readonly Key<Curve<(ShaftSpeed Speed, Torque Torque)>> curve = keys.Add(new CurveKey<(ShaftSpeed Speed, Torque Torque)>(
        "curve",
        "pump.csv",
        "load torque against speed at the machine's shaft: a CSV file with the columns speed_rpm, torque_Nm",
        new CurveColumns("speed_rpm", "torque_Nm", YIsNeverNegative: false),
        (rpm, newtonMetres) => (ShaftSpeed.FromRpm(rpm), Torque.FromNewtonMetres(newtonMetres)),
        Need.When("load", "table")));

    private readonly Key<Datum<Torque>> breakawayTorque = keys.Quantity<Torque>("breakaway-torque", "8 N·m", "at the machine's shaft, all that sets it in motion", Bound.FromZero);
    private readonly Key<Datum<Inertia>> inertia = keys.Quantity<Inertia>("inertia", "0.12 kg·m²", "at the machine's shaft", Bound.Any);
    private readonly Key<Datum<Ratio>> gearRatio = keys.Quantity<Ratio>("gear-ratio", "1", "motor speed over machine speed", Bound.AboveZero);
    private readonly Key<Datum<Efficiency>> gearEfficiency = keys.Quantity<Efficiency>("gear-efficiency", "96 %", "while the motor drives", Bound.PartOfWhole);
    private readonly Key<Datum<Efficiency>> gearEfficiencyBack = keys.Quantity<Efficiency>("gear-efficiency-back", "94 %", "while the load drives; the same if not said; 0 % for a gear that locks itself", Bound.UpToWhole);
    private readonly Key<Datum<Mass>> mass = keys.Quantity<Mass>("mass", "500 kg", "hoisted", Bound.AboveZero, ForHoisting);
    private readonly Key<Datum<Length>> drumDiameter = keys.Quantity<Length>("drum-diameter", "0.3 m", "of the hoist's drum", Bound.AboveZero, ForHoisting);
    private readonly Key<Datum<ShaftSpeed>> largestSpeed = keys.Quantity<ShaftSpeed>("largest-speed", "1800 rpm", "that the machine's shaft may reach", Bound.AboveZero);

    private readonly Key<IReadOnlyList<CriticalSpeedSurvey>> criticalSpeeds = keys.List("critical-speeds", "at which the machine shakes, of its shaft; none where it has none", new CriticalSpeedSection(new()), "none");

    protected override MachineSurvey Build(Values v) => new()
    {
        Load = v.Needed(load),
        Torque = v.Get(torque),
        AtSpeed = v.Get(atSpeed),
        Curve = v.Get(curve)?.Points,
        CurveFile = v.Get(curve)?.File,
        BreakawayTorque = v.Get(breakawayTorque),
        Inertia = v.Get(inertia),
        GearRatio = v.Get(gearRatio),
        GearEfficiency = v.Get(gearEfficiency),
        GearEfficiencyBack = v.Get(gearEfficiencyBack),
        Mass = v.Get(mass),
        DrumDiameter = v.Get(drumDiameter),
        LargestSpeed = v.Get(largestSpeed),
        CriticalSpeeds = v.Get(criticalSpeeds),
    };

    protected override void Check(Values v, YamlMap map, Desk desk)
    {
        if (v.Get(load) is not { } shape)
        {
            return;
        }

        foreach (var key in Keys.Where(k => k.Need is Need.Conditional condition && !condition.Words.Contains(shape.AsWritten!, StringComparer.OrdinalIgnoreCase)))
        {
            if (map.Find(key.Name) is { } node)
            {
                desk.Note(node, $"is kept but not used with the load `{shape.AsWritten}`");
            }
        }
    }
}

/// <summary>Keys of one critical speed.</summary>
internal sealed class CriticalSpeedSection(KeyList keys) : Section<CriticalSpeedSurvey>(keys)
{
    private readonly Key<Datum<ShaftSpeed>> speed = keys.Quantity<ShaftSpeed>("speed", "820 rpm", "middle of the band to leave out", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<ShaftSpeed>> width = keys.Quantity<ShaftSpeed>("width", "60 rpm", "full width of that band; a tenth of the speed if not said", Bound.AboveZero);

    protected override CriticalSpeedSurvey Build(Values v) => new(v.Needed(speed), v.Get(width));
}
