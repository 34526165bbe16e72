namespace Runup.Acceptance.Tests;

/// <summary>A folder of its own for a test, removed afterwards.</summary>
internal sealed class Scratch : IDisposable
{
    internal string Folder { get; } = Directory.CreateTempSubdirectory("runup-test-").FullName;

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    internal string Write(string name, string text)
    {
        var path = Path.Combine(Folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    /// <summary>The demo's pump, as corrected, with a change of its text.</summary>
    internal string DemoJob(Func<string, string>? change = null)
    {
        var text = File.ReadAllText(Path.Combine(RunupProgram.Root, "demo", "ostrevad", "swp-101.job.yaml"));
        return Write("swp-101.job.yaml", change is null ? text : change(text));
    }
}
