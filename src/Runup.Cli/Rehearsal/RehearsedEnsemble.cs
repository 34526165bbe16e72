using Runup.Dynamics;

namespace Runup.Cli.Rehearsal;

/// <summary>What came of the motors that the plate may stand for.</summary>
/// <param name="Result">What was seen.</param>
/// <param name="Seed">What they were drawn by.</param>
internal sealed record RehearsedEnsemble(EnsembleResult Result, ulong Seed);
