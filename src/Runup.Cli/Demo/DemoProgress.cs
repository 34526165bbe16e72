using System.Globalization;
using Runup.Cli.Terminal;
using Runup.Commissioning.FirstRun;

namespace Runup.Cli.Demo;

/// <summary>Each step of the first run as it ends: what was expected, what was measured.</summary>
internal sealed class DemoProgress(Page page) : IProgress<StepReport>
{
    public void Report(StepReport value)
    {
        page.Line($"{value.Outcome.ToUpperInvariant(),-8}{value.Title}{(value.Remark is null ? "" : $" {value.Remark}")}");
        if (value.Readings.Count > 0)
        {
            page.Table(
                [new("        reading"), new("expected", Digits: true), new("accepted", Digits: true), new("measured", Digits: true), new("unit"), new("")],
                value.Readings.Select(r => (IReadOnlyList<string>)
                [
                    $"        {r.Quantity}",
                    Text(r.Expected),
                    Band(r.Low, r.High),
                    Text(r.Measured),
                    r.Unit,
                    r.Within switch { true => "within", false => "OUTSIDE", null => "" },
                ]));
        }
    }

    /// <summary>A band with one end says so in words: beside the figure expected, a lone "to" would make a band of both.</summary>
    private static string Band(double? low, double? high) => (low, high) switch
    {
        ({ } from, { } until) => $"{Text(from)} to {Text(until)}",
        ({ } from, null) => $"at least {Text(from)}",
        (null, { } until) => $"at most {Text(until)}",
        _ => "",
    };

    private static string Text(double? value) => value is { } number
        ? number.ToString(Math.Abs(number) switch { >= 100 => "0", >= 10 => "0.0", _ => "0.00" }, CultureInfo.InvariantCulture)
        : "";
}
