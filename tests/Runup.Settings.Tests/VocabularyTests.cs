namespace Runup.Settings.Tests;

public sealed class VocabularyTests
{
    [Fact]
    public void Every_setting_is_found_by_its_name()
    {
        Setting.All.Count.ShouldBeGreaterThan(100);
        foreach (var setting in Setting.All)
        {
            Setting.Find(setting.Name).ShouldBeSameAs(setting);
        }
    }

    [Fact]
    public void A_choice_that_the_setting_does_not_have_is_refused() =>
        Should.Throw<ArgumentException>(() => SettingSet.Empty.With(Setting.RunCommandSource, "moon"));

    [Fact]
    public void A_number_for_a_choice_is_refused() =>
        Should.Throw<ArgumentException>(() => SettingSet.Empty.With(Setting.RunCommandSource, 1));

    [Fact]
    public void Later_values_win()
    {
        var set = SettingSet.Empty.With(Setting.BaseFrequency, 50).With(SettingSet.Empty.With(Setting.BaseFrequency, 60));
        set.Number(Setting.BaseFrequency).ShouldBe(60);
    }
}
