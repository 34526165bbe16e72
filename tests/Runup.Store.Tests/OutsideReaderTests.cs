using System.ComponentModel;
using System.Diagnostics;

namespace Runup.Store.Tests;

/// <summary>The program that <c>docs/formats/record.md</c> prints, in another language, agrees with ours.</summary>
public sealed class OutsideReaderTests : IDisposable
{
    private readonly SiteFolder folder = new();

    [Fact]
    public async Task The_documented_program_finds_the_same_head_and_the_same_broken_entry()
    {
        var entries = await folder.Filled(5);
        var script = Path.Combine(folder.Path, "prove.py");
        await File.WriteAllTextAsync(script, Documented());

        (await Python(script, folder.Database)).ShouldBe((0, entries[^1].Hash));

        (await Python(script, folder.Database, entries[2].Hash)).ShouldBe((0, entries[^1].Hash));
        (await Python(script, folder.Database, new string('a', 64))).ShouldBe((1, "the printed head is not in it"));

        folder.Sql("DROP TRIGGER entries_no_update; UPDATE entries SET tag = 'P-102' WHERE sequence = 3");
        (await Python(script, folder.Database)).ShouldBe((1, "entry 3 was changed"));
    }

    public void Dispose() => folder.Dispose();

    private static string Documented()
    {
        var root = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(root, "Runup.slnx")))
        {
            root = Path.GetDirectoryName(root)!;
        }

        return File.ReadAllText(Path.Combine(root, "docs", "formats", "record.md")).Split("```python\n")[1].Split("```")[0];
    }

    private static async Task<(int Status, string Text)> Python(params string[] arguments)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo("python3", arguments) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
            var text = await process.StandardOutput.ReadToEndAsync() + await process.StandardError.ReadToEndAsync();
            await process.WaitForExitAsync();
            return (process.ExitCode, text.Trim());
        }
        catch (Win32Exception)
        {
            Assert.Skip("needs python3");
            throw;
        }
    }
}
