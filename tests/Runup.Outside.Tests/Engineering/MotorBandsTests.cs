using System.Globalization;
using System.Text;
using Runup.Engineering.Motors.Ensemble;

namespace Runup.Outside.Tests.Engineering;

/// <summary>
/// The bands of all published motors of grade A to C and of the published operating points, from the plate alone, held against each published circuit's own
/// no-load current, locked-rotor current and breakdown torque (<c>motors-check.csv</c>).
/// </summary>
/// <remarks>With RUNUP_WRITE_DOCS=1 the page <c>docs/measured/motor-bands.md</c> is written anew.</remarks>
public sealed class MotorBandsTests(ITestOutputHelper output)
{
    public static TheoryData<PlateTrust, Knowledge, double, double> Bars => new()
    {
        // The project's bars: share of (motor, quantity) pairs inside 5 % to 95 %, and the median half-width of the no-load current.
        { PlateTrust.Exact, Knowledge.Plate, 0.85, 0.20 },
        { PlateTrust.Exact, Knowledge.LockedRotorCurrent, 0.85, 0.12 },
        { PlateTrust.Exact, Knowledge.CodeLetter, 0.85, 0.12 },
        { PlateTrust.Exact, Knowledge.NoLoadReading, 0.85, 0.05 },
        { PlateTrust.WithTolerances, Knowledge.Plate, 0.90, double.PositiveInfinity },
        { PlateTrust.WithTolerances, Knowledge.LockedRotorCurrent, 0.90, double.PositiveInfinity },
        { PlateTrust.WithTolerances, Knowledge.CodeLetter, 0.90, double.PositiveInfinity },
        { PlateTrust.WithTolerances, Knowledge.NoLoadReading, 0.90, double.PositiveInfinity },
    };

    [Theory]
    [MemberData(nameof(Bars))]
    public void Published_values_lie_in_the_bands(PlateTrust trust, Knowledge knowledge, double inside, double halfWidth)
    {
        var motors = PublishedEnsemble.Ids.Select(id => PublishedEnsemble.Of(id, knowledge, trust)).ToList();
        output.WriteLine(Table(motors));
        output.WriteLine(Summary(trust, knowledge, motors));
        Inside(motors).ShouldBeGreaterThanOrEqualTo(inside);
        Median(motors.Select(motor => motor.NoLoadHalfWidth)).ShouldBeLessThanOrEqualTo(halfWidth);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(4711)]
    public void The_bars_do_not_hang_on_the_seed(int seed)
    {
        var motors = PublishedEnsemble.Ids.Select(id => PublishedEnsemble.Of(id, Knowledge.Plate, PlateTrust.Exact, (ulong)seed)).ToList();
        Inside(motors).ShouldBeGreaterThanOrEqualTo(0.85);
        Median(motors.Select(motor => motor.NoLoadHalfWidth)).ShouldBeLessThanOrEqualTo(0.20);
    }

    [Theory]
    [InlineData(PlateTrust.Exact)]
    [InlineData(PlateTrust.WithTolerances)]
    public void The_middle_of_the_rated_point_is_the_plate_itself(PlateTrust trust)
    {
        foreach (var motor in PublishedEnsemble.Ids.Select(id => PublishedEnsemble.Of(id, Knowledge.Plate, trust)))
        {
            if (Runup.Engineering.Motors.PlateBalance.Of(motor.Plate) is not Runup.Engineering.Motors.PlateBalance.Consistent)
            {
                continue;
            }

            // The project's bar for a consistent plate: within 0.1 %.
            motor.Bands.RatedCurrent.P50.Amperes.ShouldBe(motor.Plate.Current.Amperes, 1e-3 * motor.Plate.Current.Amperes, motor.Id);
            motor.Bands.RatedTorque.P50.NewtonMetres.ShouldBe(motor.Plate.RatedTorque.NewtonMetres, 1e-3 * motor.Plate.RatedTorque.NewtonMetres, motor.Id);
        }
    }

    [Fact]
    public void The_page_tells_what_is_measured()
    {
        var summaries = Bars.Select(row => row.Data).Select(bar =>
            Summary(bar.Item1, bar.Item2, PublishedEnsemble.Ids.Select(id => PublishedEnsemble.Of(id, bar.Item2, bar.Item1)).ToList())).ToList();
        var motors = PublishedEnsemble.Ids.Concat(PublishedEnsemble.OutsideTheCount).Select(id => PublishedEnsemble.Of(id, Knowledge.Plate, PlateTrust.Exact)).ToList();
        var path = Path.Combine(RepositoryRoot.Folder, "docs", "measured", "motor-bands.md");
        if (Environment.GetEnvironmentVariable("RUNUP_WRITE_DOCS") is not null)
        {
            var text = File.ReadAllText(path).ReplaceLineEndings("\n");
            File.WriteAllText(path, text[..text.IndexOf("<!-- measured -->", StringComparison.Ordinal)] + Measured(summaries, motors));
        }

        // Numbers may differ in the last place from one computer to another, since a member is accepted or refused by a comparison: widths within two points.
        var page = File.ReadAllText(path);
        foreach (var summary in summaries)
        {
            var cells = summary.Split('|', StringSplitOptions.TrimEntries);
            var told = page.Split('\n').Single(line => line.StartsWith($"| {cells[1]} | {cells[2]} |", StringComparison.Ordinal)).Split('|', StringSplitOptions.TrimEntries);
            for (var cell = 3; cell < cells.Length - 1; cell++)
            {
                Number(told[cell]).ShouldBe(Number(cells[cell]), 2.2, summary);
            }
        }
    }

    private static double Number(string cell) => double.Parse(cell.Split(' ')[0], CultureInfo.InvariantCulture);

    private static string Measured(List<string> summaries, List<PublishedEnsemble> motors) => $"""
        <!-- measured -->
        | Plate taken | Known beside it | Inside | No-load current ± | Locked-rotor current ± | Breakdown torque ± |
        |---|---|---|---|---|---|
        {string.Join('\n', summaries)}

        Inside: share of the {3 * PublishedEnsemble.Ids.Count} pairs of motor and quantity. ±: median of (p95 − p05)/(2 p50).

        ## Every motor, plate exact, nothing more known

        {Table(motors)}
        Published values that lie outside their band are marked `out`. The last {PublishedEnsemble.OutsideTheCount.Count} motors are of grade D, whose rating and circuit disagree: printed, not counted.

        """;

    private static string Summary(PlateTrust trust, Knowledge knowledge, IReadOnlyList<PublishedEnsemble> motors)
    {
        double Width(int pair) => 100 * Median(motors.Select(motor => motor.Pairs[pair].Band.HalfWidth()));
        var known = knowledge switch
        {
            Knowledge.Plate => "nothing more",
            Knowledge.LockedRotorCurrent => "locked-rotor current",
            Knowledge.CodeLetter => "code letter",
            _ => "no-load current read, 2 %",
        };
        return FormattableString.Invariant(
            $"| {(trust == PlateTrust.Exact ? "exact" : "with tolerances")} | {known} | {100 * Inside(motors):F1} % | {Width(0):F1} % | {Width(1):F1} % | {Width(2):F1} % |");
    }

    private static string Table(IReadOnlyList<PublishedEnsemble> motors)
    {
        var table = new StringBuilder("| Motor | No-load current A | published | Locked-rotor current A | published | Breakdown torque N·m | published |\n|---|---|---|---|---|---|---|\n");
        foreach (var motor in motors)
        {
            table.Append(CultureInfo.InvariantCulture, $"| {motor.Id} |");
            foreach (var (_, band, published) in motor.Pairs)
            {
                table.Append(CultureInfo.InvariantCulture, $" {band.P05:G4} to {band.P95:G4}, middle {band.P50:G4} | {published:G4}{(band.Holds(published) ? "" : " out")} |");
            }

            table.Append('\n');
        }

        return table.ToString();
    }

    private static double Inside(IReadOnlyList<PublishedEnsemble> motors) => 1 - (motors.Sum(motor => motor.Misses.Count()) / (3.0 * motors.Count));

    private static double Median(IEnumerable<double> values)
    {
        var ordered = values.Order().ToList();
        return ordered[ordered.Count / 2];
    }
}
