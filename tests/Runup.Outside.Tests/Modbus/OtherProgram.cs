using System.ComponentModel;
using System.Diagnostics;

namespace Runup.Outside.Tests.Modbus;

/// <summary>Runs an independent tool and waits for it.</summary>
internal static class OtherProgram
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);

    /// <summary>Its exit status, output and errors; null when there is no such program.</summary>
    public static async Task<(int Status, string Output, string Errors)?> RunAsync(string program, params string[] arguments)
    {
        using var process = new Process
        {
            StartInfo = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true, UseShellExecute = false },
        };
        try
        {
            process.Start();
        }
        catch (Win32Exception)
        {
            return null;
        }

        process.StandardInput.Close();
        using var patience = new CancellationTokenSource(Patience);
        var output = process.StandardOutput.ReadToEndAsync(patience.Token);
        var errors = process.StandardError.ReadToEndAsync(patience.Token);
        try
        {
            await process.WaitForExitAsync(patience.Token);
            return (process.ExitCode, await output, await errors);
        }
        catch (OperationCanceledException tooLong)
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"{program} did not end within {Patience.TotalSeconds:0} s", tooLong);
        }
    }
}
