using System.Globalization;
using Runup.Cli.Terminal;
using Runup.Commissioning.Diagnosis;
using Runup.Engineering.Motors.Ensemble;

namespace Runup.Cli.Checks;

/// <summary>What readings told, which told nothing, and which would tell most.</summary>
internal static class MotorReadingsPage
{
    internal static void Write(Page page, KnownMotor known)
    {
        page.Line();
        if (known.HasReadings)
        {
            page.Line($"With {Count(known.Readings.Used.Count)}, each weighed by its instrument's error; before: by the plate alone.");
        }

        if (known.ReadingsContradict)
        {
            page.Line("These readings are hardly those of a motor with this plate. Trust the bands before; look at the plate, the readings and their units again.");
        }

        foreach (var row in known.Readings.NotUsed)
        {
            page.Line($"Not used, {row}.");
        }

        foreach (var assumption in known.Readings.Assumptions)
        {
            page.Line($"Assumed: {assumption.What} ({assumption.Value}).");
        }

        page.Line(Next(known));
    }

    private static string Next(KnownMotor known) => NextReading.Best(known.Now, known.Readings.Taken) is { } next
        ? string.Create(
            CultureInfo.InvariantCulture,
            $"What would narrow this most: {What(next.Reading)}. It should bring the band of the {Figure(next.Figure)} from ±{next.Before * 100:0} % to about ±{next.After * 100:0} %.")
        : "No further reading would narrow these bands by much.";

    private static string Count(int readings) => readings == 1 ? "one reading" : string.Create(CultureInfo.InvariantCulture, $"{readings} readings");

    private static string What(ReadingToTake reading) => reading switch
    {
        ReadingToTake.WindingResistance => "measure the resistance between two terminals, winding cold and its temperature read",
        ReadingToTake.NoLoadCurrent => "read the current of the uncoupled motor at rated voltage and frequency",
        ReadingToTake.LoadedCurrent => "read current and speed together under load",
        ReadingToTake.TunedLeakage => "let the drive tune itself at standstill and read the leakage inductance",
        _ => throw new ArgumentOutOfRangeException(nameof(reading), reading, "The set is closed."),
    };

    private static string Figure(NarrowedFigure figure) => figure switch
    {
        NarrowedFigure.NoLoadCurrent => "no-load current",
        NarrowedFigure.LockedRotorCurrent => "locked-rotor current",
        NarrowedFigure.BreakdownTorque => "breakdown torque",
        NarrowedFigure.BreakawayBoost => "boost for breaking away",
        _ => throw new ArgumentOutOfRangeException(nameof(figure), figure, "The set is closed."),
    };
}
