namespace Runup.Engineering.Motors.Ensemble;

/// <summary>How far the figures of a plate are taken at their word.</summary>
public enum PlateTrust
{
    /// <summary>The motor may be off its plate by the tolerances of IEC 60034-1, its iron saturates and its bars are deep: a motor in a factory.</summary>
    WithTolerances,

    /// <summary>The motor has the plate's values within the rounding of what is printed, and a straight magnetizing line: a circuit in a textbook.</summary>
    Exact,
}
