using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Runup.Settings;

namespace Runup.Profiles.Tests.SheetOfEntry;

/// <summary>What holds for every value and every plan, on both habits of make.</summary>
public sealed class CodecProperties
{
    private static DriveProfile Profile(bool plain) => plain ? Makes.Plain : Makes.Indexed;

    [Fact]
    public void Every_value_of_every_parameter_comes_back_from_display_and_registers()
    {
        RoundTrip.Check(Makes.Plain, Makes.Size).ShouldBeEmpty();
        RoundTrip.Check(Makes.Indexed, Makes.Size).ShouldBeEmpty();
    }

    [Property(MaxTest = 500)]
    public void Words_and_back_are_the_value_whatever_width_sign_and_order(bool wide, bool signed, bool highFirst, long any)
    {
        var parameter = Makes.Number("1", "Any", "", 1, 0, 1, 0) with { Width = wide ? 32 : 16, Signed = signed, WordOrder = highFirst ? WordOrder.HighFirst : WordOrder.LowFirst };
        long raw = (wide, signed) switch { (false, false) => (ushort)any, (false, true) => (short)any, (true, false) => (uint)any, _ => (int)any };
        RegisterImage.Raw(parameter, RegisterImage.Words(parameter, raw)).ShouldBe(raw);
    }

    [Property(MaxTest = 500)]
    public void Whatever_a_drive_holds_its_settings_enter_the_same_values_again(bool plain, int seed)
    {
        var held = AnyValues.Of(Profile(plain), seed);
        var settings = SettingsReader.Read(Profile(plain), Makes.Size, held);
        var lines = Sheet.For(Profile(plain), Makes.Size, settings, held);
        foreach (var line in lines.Where(l => l.Raw is not null && !IsSpeedChange(l.Parameter!)))
        {
            line.Raw.ShouldBe(held[line.Parameter!.Number], line.Parameter.ToString());
            line.Changed.ShouldBeFalse();
        }
    }

    [Property(MaxTest = 500)]
    public void A_sheet_entered_into_another_drive_says_the_same_settings(bool plain, int seed, int other)
    {
        var settings = SettingsReader.Read(Profile(plain), Makes.Size, AnyValues.Of(Profile(plain), seed));
        var before = AnyValues.Of(Profile(plain), other);
        var lines = Sheet.For(Profile(plain), Makes.Size, settings, before);
        var read = SettingsReader.Read(Profile(plain), Makes.Size, Sheet.After(Profile(plain), Makes.Size, lines, before));
        foreach (var line in lines.Where(l => l is { Raw: not null, Fit: Fit.Exact } && !IsSpeedChange(l.Parameter!)))
        {
            foreach (var setting in line.Settings)
            {
                Same(read[setting], settings[setting]).ShouldBeTrue($"{setting} was {settings[setting]}, is {read[setting]} ({line.Parameter})");
            }
        }
    }

    [Property(MaxTest = 500)]
    public void No_value_is_ever_entered_that_the_drive_does_not_take(bool plain, int seed, NormalFloat factor)
    {
        // Plans far beyond any range, too.
        var settings = SettingsReader.Read(Profile(plain), Makes.Size, AnyValues.Of(Profile(plain), seed));
        var stretched = settings.Aggregate(SettingSet.Empty, (set, pair) => pair.Value is SettingValue.Number n && double.IsFinite(n.Si * factor.Get) ? set.With(pair.Key, n.Si * factor.Get) : set.With(pair.Key, pair.Value));
        foreach (var line in Sheet.For(Profile(plain), Makes.Size, stretched, Makes.Defaults(Profile(plain))))
        {
            if (line is { Parameter: { } parameter, Raw: { } raw })
            {
                parameter.Accepts(raw, Makes.Size).ShouldBeTrue($"{raw} into {parameter}");
            }
        }
    }

    [Property(MaxTest = 300)]
    public void What_is_not_exact_says_what_was_wanted_and_what_is_given(double hertz)
    {
        if (!double.IsFinite(hertz))
        {
            return;
        }

        var line = Sheet.For(Makes.Plain, Makes.Size, SettingSet.Empty.With(Setting.BaseFrequency, hertz), Makes.Defaults(Makes.Plain)).Single();
        var given = line.Raw!.Value * 0.1;
        switch (line.Fit)
        {
            case Fit.Exact:
                given.ShouldBe(hertz, 1e-6);
                break;
            case Fit.Rounded rounded:
                rounded.WantedSi.ShouldBe(hertz);
                rounded.GivenSi.ShouldBe(given, 1e-9);
                Math.Abs(given - hertz).ShouldBeLessThanOrEqualTo(0.05 + 1e-9);
                break;
            case Fit.OutOfRange far:
                far.WantedSi.ShouldBe(hertz);
                far.GivenSi.ShouldBe(hertz < 10 ? 10 : 400, 1e-9);
                break;
        }
    }

    [Property(MaxTest = 200)]
    public void The_order_of_entry_has_every_parameter_once_after_all_that_it_needs(bool plain)
    {
        var order = EntryOrder.Of(Profile(plain)).Select(p => p.Number).ToList();
        order.Order(StringComparer.Ordinal).ShouldBe(Profile(plain).Parameters.Select(p => p.Number).Order(StringComparer.Ordinal));
        foreach (var parameter in Profile(plain).Parameters)
        {
            foreach (var before in EntryOrder.Before(Profile(plain), parameter))
            {
                order.IndexOf(before).ShouldBeLessThan(order.IndexOf(parameter.Number));
            }
        }
    }

    private static bool IsSpeedChange(Parameter parameter) => parameter.Meaning is Meaning.Quantity { Conversion: Conversion.SpeedChange or Conversion.ChangeTime };

    private static bool Same(SettingValue? a, SettingValue? b) => (a, b) switch
    {
        (SettingValue.Number x, SettingValue.Number y) => Math.Abs(x.Si - y.Si) <= 1e-6 * Math.Max(1, Math.Abs(y.Si)),
        _ => a == b,
    };
}
