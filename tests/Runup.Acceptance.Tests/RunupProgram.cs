using System.Diagnostics;
using System.Text.Json;

namespace Runup.Acceptance.Tests;

/// <summary>The built program, run as a person runs it.</summary>
internal static class RunupProgram
{
    internal static string Root { get; } = FindRoot();

    internal static Process Start(string folder, params IEnumerable<string> arguments) => Start(folder, arguments, environment: null);

    private static Process Start(string folder, IEnumerable<string> arguments, (string Name, string Value)? environment)
    {
        var start = new ProcessStartInfo(Path.Combine(Root, OperatingSystem.IsWindows() ? "runup.cmd" : "runup"))
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        start.Environment["NO_COLOR"] = "1";
        start.Environment.Remove("COLUMNS");
        if (environment is var (name, value))
        {
            start.Environment[name] = value;
        }

        return Process.Start(start) ?? throw new InvalidOperationException("The program did not start.");
    }

    internal static async Task<Run> Call(string folder, IEnumerable<string> arguments, string input = "", (string Name, string Value)? environment = null)
    {
        using var process = Start(folder, arguments, environment);
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        try
        {
            await process.StandardInput.WriteAsync(input);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // The program ended without reading what it was given; its status and words tell the rest.
        }

        using var limit = new CancellationTokenSource(TimeSpan.FromMinutes(3));
        await process.WaitForExitAsync(limit.Token);
        return new Run(process.ExitCode, await output, await errors);
    }

    internal static Task<Run> Call(string folder, params string[] arguments) => Call(folder, arguments, "");

    private static string FindRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Runup.slnx")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("No Runup.slnx above the tests.");
        }

        return folder;
    }
}

/// <summary>How a call of the program ended.</summary>
internal sealed record Run(int Status, string Output, string Errors)
{
    internal JsonElement Json => JsonDocument.Parse(Output).RootElement;

    /// <summary>Whatever went wrong, a person must never see the program's insides.</summary>
    internal void ShowsNoInsides()
    {
        foreach (var text in (string[])[Output, Errors])
        {
            text.ShouldNotContain("   at Runup.");
            text.ShouldNotContain("   at System.");
            text.ShouldNotContain("Unhandled exception");
            text.ShouldNotContain("a mistake in Runup itself");
        }
    }
}
