using System.ComponentModel;
using System.Diagnostics;

namespace Runup.Reports.Pdf;

/// <summary>Prints an HTML file to PDF by a browser without a window, with a profile of its own that is thrown away, and without network.</summary>
public static class PrintedPage
{
    /// <summary>How long a browser may take, also on a slow computer that has just started.</summary>
    public static TimeSpan Patience { get; } = TimeSpan.FromSeconds(60);

    private const int Tries = 20;
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);

    /// <summary>Prints a file.</summary>
    /// <param name="browser">The browser's program.</param>
    /// <param name="html">The file to print.</param>
    /// <param name="patience">How long it may take.</param>
    /// <param name="time">The clock that the patience is measured by.</param>
    /// <param name="cancellation">Gives it up.</param>
    public static async Task<Printing> Print(string browser, string html, TimeSpan patience, TimeProvider time, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(time);
        var folder = Directory.CreateTempSubdirectory("runup-print-");
        try
        {
            var pdf = Path.Combine(folder.FullName, "page.pdf");
            return await Run(browser, Arguments(folder.FullName, html, pdf), patience, time, cancellation) is { } why
                ? new Printing.Failed(why)
                : Read(pdf);
        }
        finally
        {
            await Forget(folder);
        }
    }

    private static IEnumerable<string> Arguments(string folder, string html, string pdf) =>
    [
        "--headless=new", "--disable-gpu", "--no-first-run", "--no-default-browser-check", "--disable-extensions", "--disable-background-networking", "--disable-sync",
        "--host-resolver-rules=MAP * ~NOTFOUND", $"--user-data-dir={Path.Combine(folder, "profile")}", "--no-pdf-header-footer", $"--print-to-pdf={pdf}",
        // A browser refuses to work for root with its sandbox; the page is ours and runs no script.
        .. OperatingSystem.IsLinux() && Environment.UserName is "root" ? (string[])["--no-sandbox"] : [],
        new Uri(Path.GetFullPath(html)).AbsoluteUri,
    ];

    // Null where it ended well.
    private static async Task<string?> Run(string browser, IEnumerable<string> arguments, TimeSpan patience, TimeProvider time, CancellationToken cancellation)
    {
        var start = new ProcessStartInfo(browser) { UseShellExecute = false, CreateNoWindow = true, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        try
        {
            using var process = Process.Start(start);
            return process is null ? "it did not start" : await Ended(process, patience, time, cancellation);
        }
        catch (Win32Exception e)
        {
            return $"it can't be started: {e.Message}";
        }
    }

    private static async Task<string?> Ended(Process process, TimeSpan patience, TimeProvider time, CancellationToken cancellation)
    {
        using var limit = new CancellationTokenSource(patience, time);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(limit.Token, cancellation);
        // What it says is for its makers; it must be taken off it all the same.
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        try
        {
            await process.WaitForExitAsync(either.Token);
            return process.ExitCode == 0 ? null : FormattableString.Invariant($"it ended with status {process.ExitCode}");
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            cancellation.ThrowIfCancellationRequested();
            return FormattableString.Invariant($"it was not done after {patience.TotalSeconds:0} s");
        }
    }

    private static Printing Read(string pdf)
    {
        if (!File.Exists(pdf))
        {
            return new Printing.Failed("it wrote no file");
        }

        var bytes = File.ReadAllBytes(pdf);
        return bytes.AsSpan().StartsWith("%PDF-"u8) ? new Printing.Printed(bytes) : new Printing.Failed("what it wrote is no PDF");
    }

    // A browser that has printed is still closing for a moment, and writes into its folder while it does.
    private static async Task Forget(DirectoryInfo folder)
    {
        for (var left = Tries; left > 0; left--)
        {
            try
            {
                folder.Delete(recursive: true);
                return;
            }
            catch (DirectoryNotFoundException)
            {
                return;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                await Task.Delay(Pause, TimeProvider.System, CancellationToken.None);
            }
        }
    }
}
