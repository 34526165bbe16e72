using Runup.Commissioning.Survey;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Sections;

/// <summary>Keys of how the set is to run.</summary>
internal sealed class OperationSection(KeyList keys) : Section<OperationSurvey>(keys)
{
    private readonly Key<Datum<ElectricalFrequency>> minimumFrequency = keys.Quantity<ElectricalFrequency>("minimum-frequency", "20 Hz", "lowest running frequency", Bound.Any);
    private readonly Key<Datum<ElectricalFrequency>> maximumFrequency = keys.Quantity<ElectricalFrequency>("maximum-frequency", "50 Hz", "highest frequency", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<Duration>> acceleration = keys.Quantity<Duration>("acceleration", "10 s", "from 0 to the highest frequency", Bound.AboveZero);
    private readonly Key<Datum<Duration>> deceleration = keys.Quantity<Duration>("deceleration", "15 s", "from the highest frequency to 0", Bound.AboveZero);
    private readonly Key<Datum<string>> directions = keys.Choice("directions", "forward", "forward or both", Choices.Words("forward", "both"));
    private readonly Key<Datum<Ratio>> stopsPerHour = keys.Quantity<Ratio>("stops-per-hour", "2", "stops in an hour", Bound.Any);
    private readonly Key<IReadOnlyList<CyclePart>> cycle = keys.List("cycle", "duty that repeats, at the machine's shaft; agrees with stops-per-hour", new CycleSection(new()));
    private readonly Key<Datum<bool>> restart = keys.Flag("restart-after-power-loss", "no", "whether it starts by itself when power returns");

    protected override OperationSurvey Build(Values v) => new()
    {
        MinimumFrequency = v.Get(minimumFrequency),
        MaximumFrequency = v.Needed(maximumFrequency),
        Acceleration = v.Get(acceleration),
        Deceleration = v.Get(deceleration),
        Directions = v.Get(directions),
        StopsPerHour = v.Get(stopsPerHour),
        Cycle = v.Get(cycle) ?? [],
        RestartAfterPowerLoss = v.Get(restart),
    };

    protected override void Check(Values v, YamlMap map, Desk desk)
    {
        if (v.Get(minimumFrequency) is { } low && v.Get(maximumFrequency) is { } high && low.Value.Si > high.Value.Si)
        {
            desk.Problems.Add(map.Find(minimumFrequency.Name)!, $"{Quote.Of(low.AsWritten!)} lies above the highest frequency, {Quote.Of(high.AsWritten!)}", "are the two swapped?");
        }
    }
}

/// <summary>Keys of one part of the duty cycle.</summary>
internal sealed class CycleSection(KeyList keys) : Section<CyclePart>(keys)
{
    private readonly Key<Datum<Duration>> time = keys.Quantity<Duration>("time", "1500 s", "how long", Bound.AboveZero, Need.Yes);
    private readonly Key<Datum<ShaftSpeed>> speed = keys.Quantity<ShaftSpeed>("speed", "1460 rpm", "of the machine's shaft", Bound.Any, Need.Yes);
    private readonly Key<Datum<Torque>> torque = keys.Quantity<Torque>("torque", "42 N·m", "at the machine's shaft", Bound.Any, Need.Yes);

    protected override CyclePart Build(Values v) => new(v.Needed(time), v.Needed(speed), v.Needed(torque));
}
