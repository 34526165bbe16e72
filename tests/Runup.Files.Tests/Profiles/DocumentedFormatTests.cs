using System.Text.Json.Nodes;
using Runup.Files.Profiles;
using Runup.Files.Yaml;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Files.Tests.Profiles;

/// <summary>What <c>docs/formats/drive-profile.md</c> and the shipped schema say is what the reader does.</summary>
public sealed class DocumentedFormatTests
{
    internal static readonly string[] Examples = [.. Blocks()];

    [Fact]
    public void Every_example_in_the_documentation_is_a_profile_without_an_error()
    {
        Examples.Length.ShouldBe(3);
        foreach (var example in Examples)
        {
            Read(example).ShouldNotBeNull();
        }
    }

    [Fact]
    public void The_second_habit_of_make_says_the_same_settings_in_its_own_way()
    {
        var profile = Read(Examples[1]);
        var size = profile.Sizes[0];
        var before = ParameterValues.Defaults(profile, size);
        var plan = SettingSet.Empty.With(Setting.MaximumFrequency, 60).With(Setting.MotorPoleCount, 4).With(Setting.AccelerationTime, 12)
            .With(Setting.MotorRatedCurrent, 3.3).With(Setting.CurrentLimit, 4.95).With(Setting.MotorPowerFactor, 0.79).With(Setting.PowerUnit, "hp").With(Setting.MotorRatedPower, 745.69987158227022);
        var lines = Sheet.For(profile, size, plan, before);
        string.Join('\n', lines.Select(l => $"{l.Parameter!.Number} {l.Display} {l.Unit} {string.Join(' ', RegisterImage.Words(l.Parameter, l.Raw!.Value).Select(w => w.ToString("X4")))}")).ShouldBe(
            """
            6075h 3300 mA 0000 0CE4
            6073h 1500 ‰ 0000 05DC
            2105h 790 ‰ 0000 0316
            2106h 2 pole pairs 0000 0002
            6046h:2 1800 rpm 0000 0708
            6048h:2 12 s 0000 000C
            6048h:1 1800 rpm 0000 0708
            2110h hp  0000 0001
            2101h 1.000 hp 0000 03E8
            """);
        var run = new DriveCommand(ControlWord.EnableOperation, ElectricalFrequency.FromHertz(30), Rotation.Reverse);
        CommandCodec.WordRaw(profile.Command!, run).ShouldBe(0x7F);
        CommandCodec.ReferenceRaw(profile, profile.Command!, run, before).ShouldBe(-900);
        profile.Trips.CauseOf(0x2310).ShouldBe(TripCause.Overcurrent);
        ReadingCodec.Decode(profile, before, p => p.Number is "6078h" ? 500 : null).OutputCurrent!.Value.Amperes.ShouldBe(1.65, 1e-9);
    }

    [Fact]
    public void The_shipped_schema_is_the_one_that_the_code_makes()
    {
        var path = Path.Combine(Drives.Root, ProfileSchema.ShippedAt);
        if (Environment.GetEnvironmentVariable("RUNUP_WRITE_SCHEMA") is not null)
        {
            File.WriteAllText(path, ProfileSchema.Write());
        }

        File.ReadAllText(path).ShouldBe(ProfileSchema.Write(), $"run this test with RUNUP_WRITE_SCHEMA=1 to write {ProfileSchema.ShippedAt} anew");
    }

    [Fact]
    public void The_schema_knows_every_key_of_every_profile_that_we_ship()
    {
        var schema = JsonNode.Parse(ProfileSchema.Write())!;
        foreach (var text in Examples.Append(File.ReadAllText(Drives.PathOf("tern"))).Append(File.ReadAllText(Drives.PathOf("osprey"))))
        {
            SchemaWalk.Misfits(schema, YamlTree.Read(text, new Problems("p"))!).ShouldBeEmpty();
        }
    }

    [Fact]
    public void The_schema_and_the_reader_know_the_same_keys()
    {
        var schema = JsonNode.Parse(ProfileSchema.Write())!["properties"]!;
        KeysOfReader("", "zzzzzzzzzzzz: 1").ShouldBe(Keys(schema), ignoreOrder: true);
        var row = schema["groups"]!["items"]!["properties"]!["parameters"]!["items"]!["properties"]!;
        var asNumber = KeysOfReader("groups:\n  - group: g\n    parameters:\n      - {zzzzzzzzzzzz: 1}", "");
        var asChoice = KeysOfReader("groups:\n  - group: g\n    parameters:\n      - {choices: {0: a}, zzzzzzzzzzzz: 1}", "");
        asNumber.Union(asChoice, StringComparer.Ordinal).ShouldBe(Keys(row), ignoreOrder: true);
        KeysOfReader("ratings: {a: {zzzzzzzzzzzz: 1}}", "").ShouldBe(Keys(schema["ratings"]!["patternProperties"]![".+"]!["properties"]!), ignoreOrder: true);
        KeysOfReader("sizes: [{zzzzzzzzzzzz: 1}]", "").ShouldBe(Keys(schema["sizes"]!["items"]!["properties"]!), ignoreOrder: true);
        KeysOfReader("command: {zzzzzzzzzzzz: 1}", "").ShouldBe(Keys(schema["command"]!["properties"]!), ignoreOrder: true);
        KeysOfReader("readings: {zzzzzzzzzzzz: 1}", "").ShouldBe(Keys(schema["readings"]!["properties"]!), ignoreOrder: true);
        KeysOfReader("store: {zzzzzzzzzzzz: 1}", "").ShouldBe(Keys(schema["store"]!["properties"]!), ignoreOrder: true);
        KeysOfReader("identity: {zzzzzzzzzzzz: 1}", "").ShouldBe(Keys(schema["identity"]!["properties"]!), ignoreOrder: true);
    }

    [Fact]
    public void Every_key_of_a_row_stands_in_the_documentation()
    {
        var text = File.ReadAllText(Path.Combine(Drives.Root, "docs", "formats", "drive-profile.md"));
        var row = JsonNode.Parse(ProfileSchema.Write())!["properties"]!["groups"]!["items"]!["properties"]!["parameters"]!["items"]!["properties"]!;
        Keys(row).Where(k => !text.Contains($"`{k}`", StringComparison.Ordinal) && !text.Contains($"`{k}:", StringComparison.Ordinal)).ShouldBeEmpty();
    }

    private static IEnumerable<string> Keys(JsonNode properties) => properties.AsObject().Select(p => p.Key);

    // The reader lists the keys that it knows when it meets one that is like none of them.
    private static List<string> KeysOfReader(string text, string tail)
    {
        var problems = new Problems("p");
        ProfileReader.Read($"drive-profile: 1\n{text}\n{tail}", problems);
        var problem = problems.InOrder().Single(p => p.Key.EndsWith("zzzzzzzzzzzz", StringComparison.Ordinal));
        return [.. problem.WouldDo.Split('`').Where((_, i) => i % 2 == 1)];
    }

    private static DriveProfile Read(string text)
    {
        var problems = new Problems("drive-profile.md");
        var profile = ProfileReader.Read(text, problems);
        problems.InOrder().ShouldBeEmpty();
        return profile!;
    }

    private static IEnumerable<string> Blocks()
    {
        var text = File.ReadAllText(Path.Combine(Drives.Root, "docs", "formats", "drive-profile.md"));
        return text.Split("```yaml\n").Skip(1).Select(b => b[..b.IndexOf("```", StringComparison.Ordinal)]);
    }
}
