namespace Runup.Cli.Demo;

/// <summary>The demo site: which set is told in full, and what each of the others is there to show.</summary>
internal static class DemoSite
{
    internal const string Name = "Ostrevad";

    internal const string ToldInFull = "SWP-101";

    private static readonly Dictionary<string, (string Words, string Check)> Shown = new(StringComparer.OrdinalIgnoreCase)
    {
        ["AB-201"] = ("a heavy impeller: how soon may it stop? And a 460 V, 60 Hz motor on 400 V", "machine.deceleration"),
        ["FS-301"] = ("damp feed sets overnight: does it break away? On a single-phase supply", "machine.breakaway"),
        ["DF-401"] = ("it turns slowly day and night: does the fan on its shaft cool it?", "machine.low-speed-cooling"),
        ["GH-501"] = ("it lifts: it is run at its own panel, and Runup only reads", "machine.hoist"),
        ["DG-601"] = ("a 50 Hz motor wanted at 60 Hz: is there torque left?", "motor.field-weakening"),
    };

    /// <summary>What a set shows, and the check that answers it; null where it is there for no special thing.</summary>
    internal static (string Words, string Check)? Shows(string tag) => Shown.TryGetValue(tag, out var shown) ? shown : null;
}
