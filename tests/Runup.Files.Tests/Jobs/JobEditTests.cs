using FsCheck;
using FsCheck.Fluent;
using Runup.Files.Jobs;
using Runup.Files.Yaml;

namespace Runup.Files.Tests.Jobs;

public sealed class JobEditTests : IDisposable
{
    private const string Survey = """
        # survey of 3 May
        runup: 1
        tag: P-1            # as on the panel
        supply:
          voltage: 400 V    # measured 397

          # frequency was told
          frequency: 50 Hz
        motor:
          plate: {output: 7.5 kW, voltage: 400 V, current: 14.4 A, frequency: 50 Hz, speed: 1460 rpm}
        drive:
          profile: tern
          size: "7.5-400"
        cable:
          # nothing known yet
        machine: {load: quadratic, torque: 42 N·m, at-speed: 1460 rpm}
        operation:
          maximum-frequency: {value: 50 Hz, from: told}
        """;

    private readonly string folder = FullJob.Folder(Directory.CreateTempSubdirectory("runup-edit-").FullName);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("tag", "P-2", "tag: P-1 ", "tag: P-2 ")]
    [InlineData("supply.voltage", "415 V", "voltage: 400 V    #", "voltage: 415 V    #")]
    [InlineData("motor.plate.output", "7,5 kW", "output: 7.5 kW,", "output: \"7,5 kW\",")]
    [InlineData("drive.size", "11-400", "\"7.5-400\"", "\"11-400\"")]
    [InlineData("operation.maximum-frequency", "60 Hz", "{value: 50 Hz,", "{value: 60 Hz,")]
    [InlineData("operation.maximum-frequency.from", "measured", "from: told", "from: measured")]
    [InlineData("supply.phases", "3", "  frequency: 50 Hz\nmotor", "  frequency: 50 Hz\n  phases: 3\nmotor")]
    [InlineData("title", "Pump: the old one", "# as on the panel\n", "# as on the panel\ntitle: \"Pump: the old one\"\n")]
    [InlineData("motor.plate.standard", "IEC", "plate: {output", "plate: {standard: IEC, output")]
    [InlineData("motor.plate.poles", "4", "speed: 1460 rpm}\ndrive", "speed: 1460 rpm, poles: 4}\ndrive")]
    [InlineData("motor.kind", "induction", "motor:\n  plate", "motor:\n  kind: induction\n  plate")]
    [InlineData("motor.measured.no-load-current", "6.4 A", "1460 rpm}\ndrive:", "1460 rpm}\n  measured:\n    no-load-current: 6.4 A\ndrive:")]
    [InlineData("cable.length", "65 m", "cable:\n", "cable:\n  length: 65 m\n")]
    [InlineData("place.ambient", "35 °C", "from: told}", "from: told}\nplace:\n  ambient: 35 °C")]
    [InlineData("operation.maximum-frequency.note", "by the operator", "from: told}", "from: told, note: by the operator}")]
    public void Changes_one_span_and_nothing_else(string path, string value, string before, string after)
    {
        foreach (var newLine in new[] { "\n", "\r\n" })
        {
            string Lines(string text) => text.Replace("\n", newLine, StringComparison.Ordinal);
            Set(Lines(Survey), path, value).ShouldBe(Lines(Survey).Replace(Lines(before), Lines(after), StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("supply.voltage", "400", "supply.voltage: `400` has no unit")]
    [InlineData("motor.plate.speed", "1,500 rpm", "can be 1500 rpm or 1.5 rpm")]
    [InlineData("motor.plate.speed", "", "nothing")]
    [InlineData("supply.volts", "400 V", "there is no such key here")]
    [InlineData("supply", "400 V", "a group of keys")]
    [InlineData("operation.cycle[1].speed", "5 rpm", "add entries to a list by hand")]
    [InlineData("machine.curve", "../secret.csv", "a file in the job's folder would do")]
    [InlineData("not a path", "1", "it is no path of a key")]
    [InlineData("tag.x", "1", "a group of keys would have to stand here")]
    [InlineData("motor.plate.voltage.value", "1 V", "a group of keys would have to stand here")]
    public void Refuses_what_would_not_read_back(string path, string value, string found) =>
        JobEdit.Set(Survey, path, value).ShouldBeOfType<JobEditing.Refused>().Problems.Select(p => p.ToString()).ShouldContain(p => p.Contains(found, StringComparison.Ordinal));

    [Fact]
    public void A_text_that_is_wrong_elsewhere_can_still_be_put_right_key_by_key()
    {
        var wrong = Survey.Replace("400 V    #", "400    #", StringComparison.Ordinal).Replace("14.4 A", "14.4", StringComparison.Ordinal);
        var better = Set(wrong, "supply.voltage", "400 V");
        Set(better, "motor.plate.current", "14.4 A").ShouldBe(Survey);
    }

    [Fact]
    public void An_open_line_is_filled_in_before_its_comment()
    {
        var text = Survey.Replace("voltage: 400 V    #", "voltage:    #", StringComparison.Ordinal);
        Set(text, "supply.voltage", "400 V").ShouldBe(Survey.Replace("400 V    #", "400 V    #", StringComparison.Ordinal));
    }

    [Fact]
    public void A_last_line_without_an_end_gets_a_successor() =>
        Set("runup: 1\ntag: P-1", "title", "x").ShouldBe("runup: 1\ntag: P-1\ntitle: x");

    [Fact]
    public void An_edit_of_any_value_leaves_every_other_character()
    {
        var problems = new Problems("x");
        var values = Scalars(YamlTree.Read(FullJob.Text, problems)!).ToList();
        var edits = Gen.Zip(Gen.Elements(values.ToArray()), Gen.Choose(1, 9));
        Prop.ForAll(Arb.From(edits), edit =>
        {
            var (scalar, digit) = edit;
            // A digit in place of the first one that does not change what the key is about; words stay as they are.
            var at = scalar.Text.AsSpan().IndexOfAnyInRange('1', '9');
            var value = at < 0 ? scalar.Text : scalar.Text[..at] + digit + scalar.Text[(at + 1)..];
            return JobEdit.Set(FullJob.Text, scalar.KeyPath, value, folder: folder) switch
            {
                JobEditing.Changed c => IsOnlyChangedAt(c.Text, scalar.Place, value),
                JobEditing.Refused r => r.Problems.Count > 0,
                _ => false,
            };
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(500));
    }

    [Fact]
    public void A_key_that_was_taken_out_goes_back_in_without_touching_the_rest()
    {
        var full = FullJob.Text.Split('\n');
        foreach (var (line, index) in full.Select((l, i) => (l, i)).Where(l => l.l.StartsWith("  ", StringComparison.Ordinal) && !l.l.TrimEnd().EndsWith(':') && !l.l.Contains('{', StringComparison.Ordinal)))
        {
            var without = string.Join('\n', full.Where((_, i) => i != index));
            var path = PathOfLine(full, index);
            var value = line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..].Split('#')[0].Trim().Trim('"');
            var edited = Set(without, path, value, folder);
            edited.Length.ShouldBeGreaterThan(without.Length, path);
            CommonEnds(without, edited).ShouldBe(without.Length, path);
            Array.IndexOf(edited.Split('\n'), edited.Split('\n').First(l => l.Trim() == $"{line.Split(':')[0].Trim()}: {value}" && l.Length - l.TrimStart().Length == line.Length - line.TrimStart().Length))
                .ShouldBeLessThanOrEqualTo(index, path);
        }
    }

    private static string Set(string text, string path, string value, string? folder = null) => JobEdit.Set(text, path, value, folder: folder) switch
    {
        JobEditing.Changed changed => changed.Text,
        JobEditing.Refused refused => throw new Xunit.Sdk.XunitException(path + "\n" + string.Join('\n', refused.Problems)),
        _ => throw new InvalidOperationException(),
    };

    private static bool IsOnlyChangedAt(string edited, Place place, string value)
    {
        var before = FullJob.Text;
        return edited.StartsWith(before[..place.Start], StringComparison.Ordinal)
            && edited.EndsWith(before[place.End..], StringComparison.Ordinal)
            && edited[place.Start..(edited.Length - (before.Length - place.End))].Trim('"') == value;
    }

    private static int CommonEnds(string shorter, string longer)
    {
        var start = 0;
        while (start < shorter.Length && shorter[start] == longer[start])
        {
            start++;
        }

        var end = 0;
        while (end < shorter.Length - start && shorter[^(end + 1)] == longer[^(end + 1)])
        {
            end++;
        }

        return start + end;
    }

    private static string PathOfLine(string[] lines, int index)
    {
        int Indent(int i) => lines[i].Length - lines[i].TrimStart().Length;
        string Key(int i) => lines[i].Trim().Split(':')[0];
        var path = Key(index);
        for (int i = index - 1, indent = Indent(index); i >= 0 && indent > 0; i--)
        {
            if (Indent(i) < indent && lines[i].Trim().Length > 0)
            {
                indent = Indent(i);
                path = $"{Key(i)}.{path}";
            }
        }

        return path;
    }

    private static IEnumerable<YamlScalar> Scalars(YamlNode node) => node switch
    {
        YamlScalar scalar => [scalar],
        YamlMap map => map.Entries.SelectMany(e => Scalars(e.Value)),
        YamlList list => list.Items.SelectMany(Scalars),
        _ => [],
    };
}
