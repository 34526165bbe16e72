namespace Runup.Commissioning.Checks;

/// <summary>Shorthand for checks of a whole job.</summary>
internal static class JobCheck
{
    internal const string NoCircuit = "a plate that an induction motor can have (see the findings of plate)";

    /// <summary>What keeps the motion from being told, in words; null where nothing does.</summary>
    internal static string? MissingForMotion(JobContext context) =>
        context.Meant.Circuit is null ? NoCircuit
        : context.Meant.Machine.Missing is { } missing ? missing
        : context.Meant.Motion is null ? "inertia, current and frequency of a set that is built"
        : null;

    /// <summary>What keeps ramps from being told; null where nothing does.</summary>
    internal static string? MissingForRamps(JobContext context) =>
        MissingForMotion(context) ?? (context.Meant.Machine.InertiaIsKnown ? null : "the machine's inertia (machine.inertia)");
}
