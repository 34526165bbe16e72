using FsCheck.Xunit;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Tests.Checks;
using Runup.Commissioning.Translation;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Translating;

public sealed class DriveTranslationTests
{
    private static readonly DriveSize Tern = DemoFiles.TernSize("7.5-400");
    private static readonly DriveSize Osprey = DemoFiles.Osprey.FindSize("7.5-400")!;

    [Property(MaxTest = 60)]
    public void Both_demo_makes_forth_and_back_lose_nothing_that_both_can_express(bool fromTern, int seed)
    {
        var (old, size, other, otherSize) = fromTern ? (DemoFiles.Tern, Tern, DemoFiles.Osprey, Osprey) : (DemoFiles.Osprey, Osprey, DemoFiles.Tern, Tern);
        LosesNothing(new(old, size, Any(old, size, seed)), other, otherSize).ShouldBeGreaterThan(30);
    }

    [Property(MaxTest = 100)]
    public void Any_two_makes_forth_and_back_lose_nothing_that_both_can_express(int one, int other, int values)
    {
        var old = AnyMake.Of(one, Tern);
        LosesNothing(new(old, Tern, AnyMake.Values(old, values)), AnyMake.Of(other, Tern), Tern).ShouldBeGreaterThan(20);
    }

    [Property(MaxTest = 3)]
    public void Every_value_of_any_make_comes_back_from_display_and_registers(int one) => RoundTrip.Check(AnyMake.Of(one, Tern), Tern).ShouldBeEmpty();

    [Property(MaxTest = 200)]
    public void What_any_make_says_is_entered_again_as_it_stood(int one, int values)
    {
        var profile = AnyMake.Of(one, Tern);
        var held = AnyMake.Values(profile, values);
        foreach (var line in Profiles.Sheet.For(profile, Tern, SettingsReader.Read(profile, Tern, held), held))
        {
            (line.Raw ?? held[line.Parameter!.Number]).ShouldBe(held[line.Parameter!.Number], line.Parameter.ToString());
        }
    }

    [Property(MaxTest = 100)]
    public void Every_setting_that_the_old_drive_says_has_one_row_and_nothing_is_entered_that_the_new_one_does_not_take(int one, int other, int values)
    {
        var old = AnyMake.Of(one, Tern);
        var state = new HeldState(old, Tern, AnyMake.Values(old, values));
        var translation = DriveTranslation.Of(state, AnyMake.Of(other, Tern), Tern, null);
        foreach (var setting in Setting.All.Where(s => state.Of(s) is not null))
        {
            translation.Rows.Count(r => r.Setting == setting).ShouldBe(1, setting.Name);
        }

        foreach (var parameter in translation.New.Profile.Parameters)
        {
            parameter.Accepts(translation.New.Values[parameter.Number]!.Value, Tern).ShouldBeTrue(parameter.ToString());
        }
    }

    [Fact]
    public void A_ramp_is_converted_and_its_working_shown()
    {
        var ramp = Of(Planned(), DemoFiles.Osprey, Osprey, Setting.DecelerationTime);
        (ramp.Fate, ramp.OldText, ramp.NewText).ShouldBe((Fate.Converted, "12.00 s", "12 s, 1500 rpm"));
        ramp.Note.ShouldNotBeNull().ShouldContain("12 s to 50 Hz");
    }

    [Fact]
    public void What_the_new_drive_lacks_says_what_to_do_instead()
    {
        var row = Of(Planned(), Without(DemoFiles.Osprey, Osprey, Setting.BusTimeout), Osprey, Setting.BusTimeout);
        (row.Fate, row.NewText).ShouldBe((Fate.NotOffered, null));
        row.Note.ShouldNotBeNull().ShouldContain("wire a run release");
    }

    [Fact]
    public void A_value_beyond_the_new_drive_needs_a_decision_and_says_how_far_it_goes()
    {
        var slow = new DriveProfile([.. DemoFiles.Osprey.Parameters.Select(p => p is { Number: "6046h:2", Form: ParameterForm.Numeric n } ? p with { Form = n with { High = 1200 } } : p)]) { Family = "slow", Title = "Slow", Sizes = [Osprey] };
        var row = Of(Planned(), slow, Osprey, Setting.MaximumFrequency);
        (row.Fate, row.NewText).ShouldBe((Fate.NeedsDecision, "1200 rpm"));
        row.Note.ShouldNotBeNull().ShouldContain("50 Hz is wanted, the drive goes only to 40 Hz");
    }

    [Fact]
    public void What_the_old_drive_lacks_comes_from_the_plan_and_says_so()
    {
        var old = Planned() with { Profile = Without(DemoFiles.Tern, Tern, Setting.BusLossAction) };
        var row = Of(old, DemoFiles.Osprey, Osprey, Setting.BusLossAction, Plan());
        (row.Fate, row.OldText, row.NewText).ShouldBe((Fate.Required, null, "ramp"));
        row.Note.ShouldNotBeNull().ShouldStartWith("not known from the old drive; as the job plans it: ");
    }

    [Fact]
    public void What_neither_drive_nor_job_says_stands_as_from_the_factory_and_is_asked_for()
    {
        var old = Planned() with { Profile = Without(DemoFiles.Tern, Tern, Setting.BusLossAction) };
        var row = Of(old, DemoFiles.Osprey, Osprey, Setting.BusLossAction);
        (row.Fate, row.NewText).ShouldBe((Fate.Required, "none"));
    }

    [Fact]
    public void A_word_of_the_old_drive_that_says_no_value_is_left_to_a_person()
    {
        var osprey = new HeldState(DemoFiles.Osprey, Osprey, ParameterValues.Defaults(DemoFiles.Osprey, Osprey));
        var plan = SettingsPlan.For(DemoFiles.Context("dg-601.job.yaml"));
        var row = Of(osprey, DemoFiles.Tern, Tern, Setting.SkipFrequency1, plan);
        (row.Fate, row.OldText, row.NewText).ShouldBe((Fate.NeedsDecision, "none", "37.8 Hz"));
    }

    [Fact]
    public void What_was_changed_and_means_nothing_to_another_make_is_not_lost_from_sight()
    {
        var mute = new DriveProfile([.. DemoFiles.Tern.Parameters.Select(p => p.Number == "172" ? p with { Meaning = null } : p)]) { Family = "mute", Title = "Mute", Sizes = [Tern] };
        var row = DriveTranslation.Of(Planned() with { Profile = mute }, DemoFiles.Osprey, Osprey, null).Rows.Single(r => r.Setting is null);
        (row.Fate, row.OldText, row.NewText).ShouldBe((Fate.NeedsDecision, "12.00 s", null));
    }

    /// <summary>What one drive says and the other can say exactly comes back; what is rounded worth a word has the word.</summary>
    private static int LosesNothing(HeldState old, DriveProfile other, DriveSize size)
    {
        var forth = DriveTranslation.Of(old, other, size, null);
        var back = DriveTranslation.Of(forth.New, old.Profile, old.Size, null);
        var common = Setting.All.Where(s => old.Of(s) is not null && IsSaid(forth, s) && IsSaid(back, s)).ToList();

        // Rounded on its way, what another is counted with moves the other: then the first drive itself could not say it.
        var countedAlike = AnyMake.CountedWith.All(s => Same(forth.New.Of(s), old.Of(s)));
        foreach (var setting in common)
        {
            var isExact = Same(forth.New.Of(setting), old.Of(setting));
            if (isExact && (countedAlike || old.Carrying(setting).All(p => p.Meaning is not Meaning.Quantity { Conversion: not Conversion.Direct })))
            {
                Same(back.New.Of(setting), old.Of(setting)).ShouldBeTrue($"{setting} was {old.Of(setting)}, came back as {back.New.Of(setting)}");
            }
            else if (!isExact)
            {
                var (was, given) = (old.Settings.Number(setting)!.Value, forth.New.Settings.Number(setting)!.Value);
                var note = forth.Rows.Single(r => r.Setting == setting).Note ?? "";
                (Math.Abs(given - was) <= 0.0101 * Math.Abs(was) || note.Contains("rounded by the drive", StringComparison.Ordinal)).ShouldBeTrue($"{setting} was {was}, is {given}: {note}");
            }
        }

        return common.Count;
    }

    private static bool IsSaid(DriveTranslation translation, Setting setting) => translation.Rows.Any(r => r.Setting == setting && r.Fate is Fate.Kept or Fate.Converted);

    private static bool Same(SettingValue? a, SettingValue? b) => (a, b) is (SettingValue.Number x, SettingValue.Number y) ? Math.Abs(x.Si - y.Si) <= 1e-9 * Math.Max(1e-6, Math.Abs(y.Si)) : a == b;

    private static TranslatedSetting Of(HeldState old, DriveProfile profile, DriveSize size, Setting setting, SettingsPlan? plan = null) =>
        DriveTranslation.Of(old, profile, size, plan).Rows.Single(r => r.Setting == setting);

    private static DriveProfile Without(DriveProfile profile, DriveSize size, Setting setting) =>
        new([.. profile.Parameters.Where(p => p.Meaning?.Settings.Contains(setting) != true)]) { Family = "less", Title = "Less", Sizes = [size] };

    private static SettingsPlan Plan() => SettingsPlan.For(JobContext.For(DemoFiles.Job("swp-101.job.yaml"), Tern.Rating));

    private static HeldState Planned()
    {
        var factory = ParameterValues.Defaults(DemoFiles.Tern, Tern);
        return new(DemoFiles.Tern, Tern, Profiles.Sheet.After(DemoFiles.Tern, Tern, Profiles.Sheet.For(DemoFiles.Tern, Tern, Plan().Values, factory), factory));
    }

    private static ParameterValues Any(DriveProfile profile, DriveSize size, int seed)
    {
        var random = new Random(seed);
        return ParameterValues.From(profile.Parameters.Where(p => p.IsKept).Select(p => KeyValuePair.Create(p.Number, p.Form switch
        {
            ParameterForm.Choices c => c.Values[random.Next(c.Values.Count)].Raw,
            ParameterForm.Numeric n when p.Range(size) is var range => range.Low + (n.Step * random.NextInt64(0, ((range.High - range.Low) / n.Step) + 1)),
            _ => 0,
        })));
    }
}
