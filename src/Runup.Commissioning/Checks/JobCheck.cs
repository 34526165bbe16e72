namespace Runup.Commissioning.Checks;

/// <summary>Shorthand for checks of a whole job.</summary>
internal static class JobCheck
{
    internal const string NoCircuit = "a plate that an induction motor can have (see the findings of plate)";

    /// <summary>What keeps the motion from being told, in words; null where nothing does.</summary>
    internal static string? MissingForMotion(JobContext context) =>
        context.Circuit is null ? NoCircuit
        : context.Machine.Missing is { } missing ? missing
        : context.Motion is null ? "inertia, current and frequency above zero"
        : null;

    /// <summary>What keeps ramps from being told; null where nothing does.</summary>
    internal static string? MissingForRamps(JobContext context) =>
        MissingForMotion(context) ?? (context.Machine.InertiaIsKnown ? null : "the machine's inertia (machine.inertia)");
}
