using FsCheck.Xunit;
using Runup.Files.Profiles;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Files.Tests.Profiles;

/// <summary>Whatever stands in a profile, a person gets problems with lines or a profile that works, and never an exception.</summary>
public sealed class HostileProfileTests
{
    private static readonly string[] Tokens =
        ["0", "-1", "99999999999999999999", "0.0000000001", "1e9", "170", "150", "xyz", "[]", "{}", "\"\"", "~", "yes", "by-size", "16", "32", "%", "Hz", "means", "special", "choices", "no-counterpart", "65766173h", "off", "\u00e4", "11", "10", "40", "{of: 12}", "{chosen-by: 10, 0: 1, 1: 2}", "0-3", "50 Hz", "binary", "60-hz"];

    [Property(MaxTest = 400)]
    public void A_profile_with_a_word_exchanged_is_read_or_refused(int seed) => Try(Mangled(new Random(seed)));

    /// <summary>With RUNUP_LONG for some minutes.</summary>
    [Fact]
    public void Many_mangled_profiles_are_read_or_refused()
    {
        var many = Environment.GetEnvironmentVariable("RUNUP_LONG") is null ? 500 : 200_000;
        for (var seed = 0; seed < many; seed++)
        {
            Try(Mangled(new Random(seed)));
        }
    }

    [Property(MaxTest = 100)]
    public void A_profile_cut_off_or_with_a_line_lost_is_read_or_refused(int seed)
    {
        var random = new Random(seed);
        var lines = Any(random).Split('\n').ToList();
        lines.RemoveAt(random.Next(lines.Count));
        var text = string.Join('\n', lines);
        Try(random.Next(2) == 0 ? text : text[..random.Next(text.Length)]);
    }

    // Each habit of make that the documentation shows.
    private static string Any(Random random) => DocumentedFormatTests.Examples[random.Next(DocumentedFormatTests.Examples.Length)];

    private static string Mangled(Random random)
    {
        var words = System.Text.RegularExpressions.Regex.Split(Any(random), "(?<=[ :,{}\\[\\]\\n])|(?=[ :,{}\\[\\]\\n])", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(5));
        for (var i = random.Next(1, 4); i > 0; i--)
        {
            words[random.Next(words.Length)] = Tokens[random.Next(Tokens.Length)];
        }

        return string.Concat(words);
    }

    private static void Try(string text)
    {
        var problems = new Problems("p");
        var profile = ProfileReader.Read(text, problems, new Problems("c"));
        (profile is null).ShouldBe(problems.Any);
        problems.InOrder().ShouldAllBe(p => p.Line >= 1 && p.Column >= 1 && p.Found.Length > 0 && p.WouldDo.Length > 0);
        if (profile is null)
        {
            return;
        }

        // What is read must work: settings out of the factory values, and back.
        foreach (var size in profile.Regions.Count == 0 ? profile.Sizes : profile.Regions.SelectMany(r => profile.In(r.Name)!.Sizes))
        {
            var held = ParameterValues.Defaults(profile, size);
            var settings = SettingsReader.Read(profile, size, held);
            Sheet.For(profile, size, settings.With(Setting.AccelerationTime, 7), held).ShouldAllBe(l => l.Raw == null || l.Parameter!.Accepts(l.Raw.Value, size));
        }
    }
}
