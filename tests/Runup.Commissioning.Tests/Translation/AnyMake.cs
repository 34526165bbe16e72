using System.Collections.Frozen;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Translating;

/// <summary>A make with habits of its own, at random: which settings it has, in what unit and how fine, converted or not, and what its choices are called.</summary>
internal static class AnyMake
{
    private static readonly Dictionary<Setting, (Conversion Conversion, string Unit)> Otherwise = new()
    {
        [Setting.CurrentLimit] = (new Conversion.PartOf(new Basis.Of(Number(Setting.MotorRatedCurrent))), "%"),
        [Setting.MinimumFrequency] = (Conversion.NoSlipSpeed.Instance, "rpm"),
        [Setting.AccelerationTime] = (new Conversion.CountedOver(new Basis.Of(Number(Setting.BaseFrequency))), "s"),
        [Setting.DecelerationTime] = (new Conversion.CountedOver(new Basis.Of(Number(Setting.BaseFrequency))), "s"),
        [Setting.TorqueBoost] = (new Conversion.Absolute(new Basis.Of(Number(Setting.MotorRatedVoltage))), "V"),
        [Setting.DcBrakingCurrent] = (new Conversion.Absolute(new Basis.Of(Number(Setting.MotorRatedCurrent))), "A"),
    };

    /// <summary>What others are counted with; every make has it.</summary>
    internal static IReadOnlyList<Setting> CountedWith { get; } = [Setting.MotorRatedCurrent, Setting.MotorRatedVoltage, Setting.MotorPoleCount, Setting.BaseFrequency, Setting.MaximumFrequency];

    internal static DriveProfile Of(int seed, DriveSize size)
    {
        var random = new Random(seed);
        var parameters = Setting.All.Where(s => CountedWith.Contains(s) || random.Next(5) > 0).Select(s => Parameter(s, random)).ToList();
        return new([.. parameters.OrderBy(_ => random.Next())]) { Family = $"make-{seed}", Title = $"Make {seed}", Sizes = [size] };
    }

    internal static ParameterValues Values(DriveProfile profile, int seed)
    {
        var random = new Random(seed);
        return ParameterValues.From(profile.Parameters.Select(p => KeyValuePair.Create(p.Number, p.Form is ParameterForm.Choices c ? c.Values[random.Next(c.Values.Count)].Raw : random.Next(1, 2000))));
    }

    private static string Number(Setting setting) => $"p-{setting.Name}";

    private static Parameter Parameter(Setting setting, Random random)
    {
        (Conversion Conversion, string Unit) habit = Otherwise.TryGetValue(setting, out var other) && random.Next(2) == 0 ? other : (Conversion.Direct.Instance, (setting.Form as SettingForm.Numeric)?.Unit ?? "");
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
