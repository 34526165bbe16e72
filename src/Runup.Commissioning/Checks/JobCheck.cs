namespace Runup.Commissioning.Checks;

/// <summary>Shorthand for checks of a whole job.</summary>
internal static class JobCheck
{
    /// <summary>What is missing where no circuit is to be had, in words.</summary>
    internal static string NoCircuit(JobContext context) => context.Plate.IsInduction
        ? "a plate that an induction motor can have (see the findings of plate)"
        : "a prediction for this kind of motor (plate.kind-of-motor)";

    /// <summary>What keeps the motion from being told, in words; null where nothing does.</summary>
    internal static string? MissingForMotion(JobContext context) =>
        context.Meant.Circuit is null ? NoCircuit(context)
        : context.Meant.Machine.Missing is { } missing ? missing
        : context.Meant.Motion is null ? "inertia, current and frequency of a set that is built"
        : null;

    /// <summary>What keeps ramps from being told; null where nothing does.</summary>
    internal static string? MissingForRamps(JobContext context) =>
        MissingForMotion(context) ?? (context.Meant.Machine.InertiaIsKnown ? null : "the machine's inertia (machine.inertia)");
}
