using System.Globalization;

namespace Runup.Cli.Terminal;

/// <summary>One line on standard error, where that is a terminal, for work that takes longer than a second: the part done and the time left.</summary>
/// <remarks>Told from any thread. The line goes away with the work.</remarks>
internal sealed class WorkProgress(string what, TextWriter? terminal, TimeProvider time) : IProgress<double>, IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(250);

    private readonly Lock gate = new();
    private readonly long begun = time.GetTimestamp();
    private TimeSpan next = Patience;
    private double most;
    private int written;

    /// <summary>Progress of a piece of work on this process's standard error.</summary>
    internal static WorkProgress Of(string what) => new(what, Console.IsErrorRedirected ? null : Console.Error, TimeProvider.System);

    /// <inheritdoc/>
    public void Report(double value)
    {
        if (terminal is null)
        {
            return;
        }

        lock (gate)
        {
            most = Math.Max(most, value);
            var passed = time.GetElapsedTime(begun);
            if (passed >= next && most > 0)
            {
                next = passed + Pace;
                var left = passed * ((1 - most) / most);
                Put(string.Create(CultureInfo.InvariantCulture, $"{what}: {100 * most:f0} %, {Math.Ceiling(left.TotalSeconds):f0} s left"));
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (gate)
        {
            if (written > 0)
            {
                Put("");
                terminal!.Write('\r');
            }
        }
    }

    // What the line before was longer is written over with blanks: no escape sequence that a plain terminal would print.
    private void Put(string line)
    {
        terminal!.Write('\r' + line.PadRight(written));
        terminal.Flush();
        written = line.Length;
    }
}
