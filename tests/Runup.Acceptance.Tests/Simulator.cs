using System.Diagnostics;
using System.Text.Json;

namespace Runup.Acceptance.Tests;

/// <summary>A simulated drive in a process of its own.</summary>
internal sealed class Simulator : IAsyncDisposable
{
    private readonly Process process;

    private Simulator(Process process, string link) => (this.process, Link) = (process, link);

    internal string Link { get; }

    public async ValueTask DisposeAsync()
    {
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
    }

    internal static async Task<Simulator> Start(Scratch scratch, string job, params string[] more)
    {
        var started = RunupProgram.Start(scratch.Folder, ["simulate", job, "--tcp", "0", "--json", .. more]);
        var line = await started.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException(await started.StandardError.ReadToEndAsync());
        return new Simulator(started, JsonDocument.Parse(line).RootElement.GetProperty("drives")[0].GetProperty("link").GetString()!);
    }

    /// <summary>Off and on again, as its person does it.</summary>
    internal async Task PowerCycle() => (await Type("power-cycle")).ShouldBe("off and on again");

    /// <summary>A line that its person types, and what comes of it.</summary>
    internal async Task<string?> Type(string line)
    {
        await process.StandardInput.WriteLineAsync(line);
        await process.StandardInput.FlushAsync();
        return await process.StandardError.ReadLineAsync();
    }
}
