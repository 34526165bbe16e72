using Runup.Files.Jobs;
using Runup.Files.Profiles;
using Runup.Files.Tests.Jobs;
using Runup.Files.Tests.Profiles;

namespace Runup.Files.Tests.Fuzz;

/// <summary>Whatever stands in a profile or a job, a person gets it read or problems that say where and what, and never an exception.</summary>
public sealed class YamlFuzzTests
{
    private static readonly string[] Pieces =
        ["\t", "{", "}", "[", "]", "\"", "'", "&a ", "*a", "!x ", "|", ">", "- ", "? ", ": ", ",", "#", "%", "\n", "\r", "  ", "\u0085", "\ud800", "---\n", "...\n", "<<: ", "\\", "é", "\U0001F600", "7,5", "1.500", "-", "0", "1e999", "99999999999999999999", "0.0000000001", "kW", "NaN", "null", "~", "yes", "by-size", "means: ", "perhaps: ", "choices: ", "special: ", "counted-over: ", "part-of: 106", "no-counterpart", "6046h:1", "drive-profile: 2\n", "runup: 2\n"];

    [Fact]
    public void A_mangled_profile_is_read_or_refused()
    {
        var small = File.ReadAllText(Path.Combine(Drives.Root, "docs", "formats", "drive-profile.md")).Split("```yaml\n")[1].Split("```")[0];
        FuzzLane.Hold(Mutation.Several(Pieces, 5), 150, mutations =>
        {
            var problems = new Problems("p");
            var profile = ProfileReader.Read(Mutation.Apply(small, mutations), problems, new Problems("c"));
            (profile is null).ShouldBe(problems.Any);
            problems.InOrder().ShouldAllBe(p => p.Line >= 1 && p.Column >= 1 && p.Found.Length > 0 && p.WouldDo.Length > 0 && !p.ToString().Any(char.IsControl));
        });
    }

    [Fact]
    public void A_mangled_job_is_read_or_refused()
    {
        var folder = FullJob.Folder(Directory.CreateTempSubdirectory("runup-fuzz-").FullName);
        try
        {
            FuzzLane.Hold(Mutation.Several(Pieces, 5), 150, mutations =>
            {
                var reading = JobFile.ReadText(Mutation.Apply(FullJob.Text, mutations), "f.yaml", folder);
                if (reading is JobReading.Faulty faulty)
                {
                    faulty.Problems.Count.ShouldBeGreaterThan(0);
                    faulty.Problems.ShouldAllBe(p => p.Line >= 1 && p.Column >= 1 && p.Key.Length > 0 && p.Found.Length > 0 && p.WouldDo.Length > 0 && !p.ToString().Any(char.IsControl));
                }
            });
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
