using System.Text.RegularExpressions;
using Runup.Files.Jobs;
using Runup.Files.Jobs.Keys;

namespace Runup.Files.Tests.Jobs;

public sealed class JobTemplateTests : IDisposable
{
    private readonly string folder = FullJob.Folder(Directory.CreateTempSubdirectory("runup-new-").FullName);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void As_written_it_misses_the_needed_values_and_nothing_else()
    {
        var problems = FullJob.Problems(JobTemplate.Write("P-1"));
        problems.Select(p => p.Split(' ')[1].TrimEnd(':')).ShouldBe([
            "supply.voltage", "supply.frequency", "motor.plate.output", "motor.plate.voltage", "motor.plate.current", "motor.plate.frequency", "motor.plate.speed",
            "drive.profile", "drive.size", "machine.load", "machine.torque", "machine.at-speed", "operation.maximum-frequency"]);
        problems.ShouldAllBe(p => p.Contains(": no value; ", StringComparison.Ordinal));
    }

    [Fact]
    public void With_the_needed_values_filled_in_it_is_a_job_and_each_of_them_is_marked()
    {
        var text = JobTemplate.Write("P-1");
        foreach (var path in JobKeys.Paths(JobKeys.Top, "").Where(p => JobKeys.Find(p) is { Section: null, Need: Need.Always } && !IsBelowOptional(p) && p is not ("runup" or "tag")))
        {
            var start = path[(path.LastIndexOf('.') + 1)..] + ":";
            text.Split('\n').ShouldContain(l => l.Trim().StartsWith(start, StringComparison.Ordinal) && l.Contains("# * ", StringComparison.Ordinal), path);
            text = JobEdit.Set(text, path, JobKeys.Find(path)!.Example.Trim('"')).ShouldBeOfType<JobEditing.Changed>(path).Text;
        }

        text = JobEdit.Set(text, "machine.torque", "42 N·m").ShouldBeOfType<JobEditing.Changed>().Text;
        text = JobEdit.Set(text, "machine.at-speed", "1460 rpm").ShouldBeOfType<JobEditing.Changed>().Text;
        FullJob.Read(text).ShouldBeOfType<JobReading.Read>();
    }

    [Fact]
    public void Every_commented_line_is_good_as_it_stands()
    {
        var text = JobTemplate.Write("P-1");
        foreach (var (path, example) in JobKeys.Paths(JobKeys.Top, "").Select(p => (p, JobKeys.Find(p)!)).Where(k => k.Item2 is { Section: null, Need: Need.Always } && !IsBelowOptional(k.p)).Select(k => (k.p, k.Item2.Example.Trim('"'))))
        {
            text = JobEdit.Set(text, path, example, folder: folder) is JobEditing.Changed c ? c.Text : text;
        }

        var open = Regex.Replace(text, "^(?<indent> *)# (?<key>[a-z0-9-]+: )", "${indent}${key}", RegexOptions.Multiline, TimeSpan.FromSeconds(1)).Replace("torque:   ", "torque: 1 N·m ", StringComparison.Ordinal).Replace("at-speed:   ", "at-speed: 1 rpm  ", StringComparison.Ordinal);
        FullJob.Problems(open, folder).ShouldBeEmpty();
    }

    [Fact]
    public void An_odd_tag_is_quoted_and_reads_back()
    {
        foreach (var tag in new[] { "=A1+M3", "P: 1", "- x", "#7", "101", "\"q\"", "null", "it's", "{a}" })
        {
            FullJob.Problems(JobTemplate.Write(tag)).ShouldNotContain(p => p.Contains(" tag:", StringComparison.Ordinal), tag);
        }
    }

    [Fact]
    public void An_editor_finds_the_schema_where_it_is_told() =>
        JobTemplate.Write("P-1", "../schema.json").ShouldStartWith("# yaml-language-server: $schema=../schema.json\n");

    private static bool IsBelowOptional(string path)
    {
        for (var dot = path.LastIndexOf('.'); dot > 0; dot = path.LastIndexOf('.', dot - 1))
        {
            if (JobKeys.Find(path[..dot]) is { Need: Need.Never } && path[..dot].Contains('.', StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }
}
