using Runup.Profiles;

namespace Runup.Commissioning.FirstRun;

/// <summary>Predictions of a set of which motor or load are not known well enough: there are none, and no reading is judged.</summary>
public sealed class NothingPredicted : IFirstRunPredictions
{
    /// <inheritdoc/>
    public Expected Steady(ReadingKind kind, double frequencyHz, Coupling coupling) => Expected.Nothing;

    /// <inheritdoc/>
    public RampPrediction? Ramp(double frequencyHz, Coupling coupling) => null;
}
