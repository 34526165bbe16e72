using Runup.Commissioning.Survey;
using Runup.Engineering.Motors;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Sections;

/// <summary>Lists of words that more than one key or reader needs.</summary>
internal static class Words
{
    internal static Choices<WindingConnection> Connection { get; } = new(
        [("star", WindingConnection.Star), ("delta", WindingConnection.Delta)],
        [
            ("wye", WindingConnection.Star), ("Y", WindingConnection.Star), ("D", WindingConnection.Delta), ("mesh", WindingConnection.Delta),
            ("Δ", WindingConnection.Delta), ("∆", WindingConnection.Delta),

            // Halves of the winding side by side, as in the low voltage of nine and twelve leads: a star or a delta to the line all the same.
            ("YY", WindingConnection.Star), ("2Y", WindingConnection.Star), ("double-star", WindingConnection.Star), ("parallel-star", WindingConnection.Star), ("parallel-wye", WindingConnection.Star),
            ("DD", WindingConnection.Delta), ("2D", WindingConnection.Delta), ("ΔΔ", WindingConnection.Delta), ("double-delta", WindingConnection.Delta), ("parallel-delta", WindingConnection.Delta),
        ]);

    internal static Choices<MotorKind> MotorKinds { get; } = Choices.Of(
        ("induction", MotorKind.Induction),
        ("permanent-magnet", MotorKind.PermanentMagnet),
        ("synchronous-reluctance", MotorKind.SynchronousReluctance),
        ("unknown", MotorKind.Unknown));

    internal static Choices<LoadKind> Loads { get; } = Choices.Of(
        ("constant", LoadKind.Constant),
        ("linear", LoadKind.Linear),
        ("quadratic", LoadKind.Quadratic),
        ("constant-power", LoadKind.ConstantPower),
        ("hoisting", LoadKind.Hoisting),
        ("table", LoadKind.Table));

    // IEC 60364-1 names the first six; corner-earthed delta is met in North America.
    internal static Choices<string> Earthing { get; } = new(
        [.. new[] { "TN-S", "TN-C", "TN-C-S", "TN", "TT", "IT", "corner-earthed", "unknown" }.Select(w => (w, w))],
        [("corner-grounded", "corner-earthed"), ("TNS", "TN-S"), ("TNC", "TN-C"), ("TNCS", "TN-C-S")]);

    internal static Choices<string> Conductors { get; } = new(
        [("copper", "copper"), ("aluminium", "aluminium")],
        [("aluminum", "aluminium"), ("Cu", "copper"), ("Al", "aluminium")]);
}
