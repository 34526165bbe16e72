using System.Text;
using Runup.Files.Yaml;

namespace Runup.Files.Tests;

public sealed class TextOfFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("runup-files-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_file_that_is_not_there_is_a_problem_and_no_exception() =>
        Problem(Path.Combine(folder, "none.yaml")).ShouldBe("x:1:1 (file): there is no such file; check the name");

    [Fact]
    public void A_name_without_its_ending_is_completed()
    {
        foreach (var name in (string[])["bl-1.csv", "BL-1.job.yaml", "bl-12.job.yaml"])
        {
            File.WriteAllText(Path.Combine(folder, name), "");
        }

        Problem(Path.Combine(folder, "bl-1")).ShouldBe($"x:1:1 (file): there is no such file; {Path.Combine(folder, "BL-1.job.yaml")} would do");
        Problem(Path.Combine(folder, "bl-2")).ShouldEndWith("check the name");
        Problem(Path.Combine(folder, "no-folder", "bl-1")).ShouldEndWith("check the name");
    }

    [Fact]
    public void A_folder_is_not_a_file() => Problem(folder).ShouldContain("it is a folder");

    [Fact]
    public void A_name_with_NUL_is_a_problem() => Problem("a\0b").ShouldContain("it can't be read");

    [Fact]
    public void Latin_1_is_told_with_the_place_of_the_first_odd_byte() =>
        Problem(Write([.. "tag: a\nj: kg"u8, 0xB7, (byte)'m'])).ShouldBe("x:2:6 (file): a character that is not UTF-8; save the file as UTF-8");

    [Fact]
    public void UTF_16_is_told() => Problem(Write(Encoding.Unicode.GetPreamble())).ShouldContain("UTF-16");

    [Fact]
    public void A_file_too_large_is_refused_without_reading_all_of_it() =>
        Problem(Write(new byte[5_000_000])).ShouldContain("more than");

    [Fact]
    public void An_empty_name_is_told() => Problem("").ShouldBe("x:1:1 (file): its name is empty; the name of a file would do");

    [Fact]
    public void A_pipe_that_nobody_writes_into_is_not_waited_for_for_ever()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Named pipes in the file system are of Unix.");
        var pipe = Path.Combine(folder, "pipe");
        using (var made = System.Diagnostics.Process.Start("mkfifo", [pipe]))
        {
            made.WaitForExit();
        }

        Problem(pipe).ShouldContain("nothing came of it");
    }

    private string Write(byte[] bytes)
    {
        var path = Path.Combine(folder, "f.yaml");
        File.WriteAllBytes(path, bytes);
        return path;
    }

    private static string Problem(string path)
    {
        var problems = new Problems("x");
        YamlTree.ReadFile(path, problems).ShouldBeNull();
        return problems.InOrder().ShouldHaveSingleItem().ToString();
    }
}
