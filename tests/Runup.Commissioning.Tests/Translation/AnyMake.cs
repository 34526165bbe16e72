using System.Collections.Frozen;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Translating;

/// <summary>A make with habits of its own, at random: which settings it has, in what unit and how fine, converted or not, and what its choices are called.</summary>
internal static class AnyMake
{
    private static readonly Dictionary<Setting, (Conversion Conversion, string Unit)[]> Otherwise = new()
    {
        [Setting.CurrentLimit] = [(new Conversion.PartOf(new Basis.Of(Number(Setting.MotorRatedCurrent))), "%"), (new Conversion.PartOf(new Basis.SizeCurrent("normal")), "%")],
        [Setting.MinimumFrequency] = [(Conversion.NoSlipSpeed.Instance, "rpm")],
        [Setting.AccelerationTime] = [(new Conversion.CountedOver(new Basis.Of(Number(Setting.BaseFrequency))), "s"), (new Conversion.CountedOver(new Basis.Always(50, Dimension.Frequency, "50 Hz")), "s")],
        [Setting.DecelerationTime] = [(new Conversion.CountedOver(new Basis.Of(Number(Setting.BaseFrequency))), "s"), (new Conversion.CountedOver(new Basis.Always(60, Dimension.Frequency, "60 Hz")), "s")],
        [Setting.TorqueBoost] = [(new Conversion.Absolute(new Basis.Of(Number(Setting.MotorRatedVoltage))), "V"), (new Conversion.Absolute(new Basis.Always(400, Dimension.Voltage, "400 V")), "V")],
        [Setting.DcBrakingCurrent] = [(new Conversion.Absolute(new Basis.Of(Number(Setting.MotorRatedCurrent))), "A"), (new Conversion.Absolute(new Basis.SizeCurrent("normal")), "A")],
        [Setting.MotorRatedSpeed] = [(Conversion.BelowSynchronous.Instance, "Hz"), (Conversion.BelowSynchronous.Instance, "rpm"), (Conversion.BelowSynchronous.Instance, "%")],
        [Setting.SlipCompensation] = [(Conversion.OfRatedSlip.Instance, "Hz"), (Conversion.OfRatedSlip.Instance, "rpm"), (Conversion.OfRatedSlip.Instance, "%")],
    };

    private static readonly Setting[] Losses = [Setting.PhaseLoss, Setting.OutputPhaseLoss, Setting.EarthFault];

    /// <summary>What others are counted with; every make has it.</summary>
    internal static IReadOnlyList<Setting> CountedWith { get; } =
    [
        Setting.MotorRatedCurrent, Setting.MotorRatedVoltage, Setting.MotorRatedFrequency, Setting.MotorRatedSpeed, Setting.MotorPoleCount, Setting.BaseFrequency, Setting.MaximumFrequency,
    ];

    internal static DriveProfile Of(int seed, DriveSize size)
    {
        var random = new Random(seed);
        var parameters = Setting.All.Where(s => CountedWith.Contains(s) || random.Next(5) > 0).Select(s => Parameter(s, random)).ToList();
        if (random.Next(2) == 0)
        {
            parameters.RemoveAll(p => p.Meaning!.Settings.Any(Losses.Contains));
            parameters.Add(InBits(random));
        }

        return new([.. parameters.OrderBy(_ => random.Next())]) { Family = $"make-{seed}", Title = $"Make {seed}", Sizes = [size] };
    }

    internal static ParameterValues Values(DriveProfile profile, int seed)
    {
        var random = new Random(seed);
        return ParameterValues.From(profile.Parameters.Select(p => KeyValuePair.Create(p.Number, p.Form is ParameterForm.Choices c ? c.Values[random.Next(c.Values.Count)].Raw : p.Meaning is Meaning.Bits ? random.Next(0, 4096) : random.Next(1, 2000))));
    }

    // Some bits for each of three protections, in any order, with room between them.
    private static Parameter InBits(Random random)
    {
        var fields = new List<BitField>();
        var at = random.Next(3);
        foreach (var setting in Losses.OrderBy(_ => random.Next()))
        {
            var names = ((SettingForm.OneOf)setting.Form).Choices.OrderBy(_ => random.Next()).ToList();
            fields.Add(new(at, at + 1, setting, names.Select((n, i) => KeyValuePair.Create((long)i, (SettingValue?)new SettingValue.Choice(n))).ToDictionary()));
            at += 2 + random.Next(2);
        }

        return new()
        {
            Number = "p-bits",
            Name = "what trips",
            Group = "All",
            Register = 0,
            Width = 32,
            Access = ParameterAccess.StoppedOnly,
            Default = 0,
            Form = new ParameterForm.Numeric(DisplayScale.Of(1), new ParameterUnit.Fixed(""), 0, 4095, 1, []) { Digits = (Digits)random.Next(3) },
            Meaning = new Meaning.Bits(fields),
        };
    }

    private static string Number(Setting setting) => $"p-{setting.Name}";

    private static Parameter Parameter(Setting setting, Random random)
    {
        (Conversion Conversion, string Unit) habit = Otherwise.TryGetValue(setting, out var others) && random.Next(others.Length + 1) is > 0 and var which ? others[which - 1] : (Conversion.Direct.Instance, (setting.Form as SettingForm.Numeric)?.Unit ?? "");
        var names = setting.Form is SettingForm.OneOf choices ? Names(choices, random) : null;
        return new()
        {
            Number = Number(setting),
            Name = setting.Name,
            Group = "All",
            Register = 0,
            Width = 32,
            Access = ParameterAccess.StoppedOnly,
            Default = names is null ? 1 : 0,
            Form = names is null ? Numeric(setting, habit.Unit, random) : new ParameterForm.Choices([.. names.Keys.Select(raw => new NamedValue(raw, $"choice {raw}"))]),
            Meaning = names is null ? new Meaning.Quantity(setting, habit.Conversion, FrozenDictionary<long, SettingValue?>.Empty) : new Meaning.Choice([setting], names),
        };
    }

    private static ParameterForm.Numeric Numeric(Setting setting, string unit, Random random)
    {
        var scale = setting == Setting.MotorPoleCount ? 2 : random.Next(3) switch { 0 => 1m, 1 => 0.1m, _ => 0.01m };
        return new(DisplayScale.Of(scale), new ParameterUnit.Fixed(unit is "1" ? "" : unit), 1, int.MaxValue, 1, []);
    }

    private static Dictionary<long, IReadOnlyList<SettingValue>?> Names(SettingForm.OneOf form, Random random)
    {
        var all = form.Choices.OrderBy(_ => random.Next()).ToList();
        return all.Take(Math.Max(1, all.Count - random.Next(2))).Select((c, i) => KeyValuePair.Create((long)i, (IReadOnlyList<SettingValue>?)[new SettingValue.Choice(c)])).ToDictionary();
    }
}
