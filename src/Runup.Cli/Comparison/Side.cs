using Runup.Cli.Survey;
using Runup.Profiles;

namespace Runup.Cli.Comparison;

/// <summary>One side of a comparison, at hand.</summary>
/// <param name="Title">What it is, for people.</param>
/// <param name="State">What is held there.</param>
/// <param name="Job">The job that it belongs to, or null.</param>
internal sealed record Side(string Title, HeldState State, LoadedJob? Job);
