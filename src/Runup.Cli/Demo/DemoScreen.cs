using System.Globalization;
using Runup.Cli.Terminal;
using Spectre.Console;

namespace Runup.Cli.Demo;

/// <summary>The demo's terminal: what is told stays, and below it, where standard error is a terminal, a line for each set that is under way.</summary>
internal sealed class DemoScreen : IDisposable
{
    private const int BarLength = 16;
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(250);

    private readonly Lock gate = new();
    private readonly Page page = new(Console.Out);
    private readonly List<(string Tag, DemoPace Pace)> under = [];
    private readonly TextWriter? lines;
    private readonly int width;
    private readonly ITimer? timer;
    private int shown;

    internal DemoScreen(TimeProvider time)
    {
        if (Console.IsErrorRedirected)
        {
            return;
        }

        var raw = new StreamWriter(Console.OpenStandardError()) { AutoFlush = true };
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(raw) });
        if (console.Profile.Capabilities.Ansi)
        {
            (lines, width) = (raw, Math.Max(20, console.Profile.Width - 1));
            timer = time.CreateTimer(_ => Redraw(), null, Pace, Pace);
        }
    }

    /// <summary>Tells something that stays.</summary>
    internal void Say(Action<Page> say)
    {
        lock (gate)
        {
            Wipe();
            say(page);
            Draw();
        }
    }

    /// <summary>Shows a line for a set until it is taken away.</summary>
    internal void Follow(string tag, DemoPace pace)
    {
        lock (gate)
        {
            under.Add((tag, pace));
        }
    }

    /// <summary>Takes a set's line away.</summary>
    internal void Leave(string tag)
    {
        lock (gate)
        {
            under.RemoveAll(u => string.Equals(u.Tag, tag, StringComparison.Ordinal));
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        timer?.Dispose();
        lock (gate)
        {
            Wipe();
            under.Clear();
        }
    }

    private void Redraw()
    {
        lock (gate)
        {
            Wipe();
            Draw();
        }
    }

    private void Wipe()
    {
        if (shown > 0)
        {
            lines?.Write(string.Create(CultureInfo.InvariantCulture, $"\u001b[{shown}A\r\u001b[0J"));
            shown = 0;
        }
    }

    private void Draw()
    {
        if (lines is null)
        {
            return;
        }

        Console.Out.Flush();
        foreach (var (tag, pace) in under)
        {
            lines.WriteLine(Line(tag, pace));
        }

        shown = under.Count;
    }

    private string Line(string tag, DemoPace pace)
    {
        var (part, left, words) = pace.Now();
        var full = (int)Math.Round(part * BarLength);
        var time = left switch
        {
            null => "",
            { TotalSeconds: < 1 } => part < 1 ? "nearly done" : "",
            { } span => string.Create(CultureInfo.InvariantCulture, $"about {Math.Ceiling(span.TotalSeconds):0} s left"),
        };
        var line = string.Create(CultureInfo.InvariantCulture, $"{tag,-8} {new string('#', full)}{new string('.', BarLength - full)} {100 * part,3:0} %  {time,-16}{words}");
        return Visible.Text(line.Length > width ? line[..width] : line);
    }
}
