using System.Numerics;

namespace Runup.Dynamics.Plant;

/// <summary>On which of two axes at rest the stator can carry current.</summary>
/// <param name="Along">The first axis, of length 1; the second stands a quarter turn before it.</param>
/// <param name="AlongClosed">Current can flow along the first.</param>
/// <param name="AcrossClosed">Current can flow along the second.</param>
/// <param name="ExtraOhm">What the circuit of the second has beside the stator's resistance.</param>
internal readonly record struct StatorAxes(Complex Along, bool AlongClosed, bool AcrossClosed, double ExtraOhm = 0)
{
    internal bool AnyClosed => AlongClosed || AcrossClosed;

    /// <summary>A vector as seen from the axes.</summary>
    internal Complex From(Complex atRest) => atRest * Complex.Conjugate(Along);

    /// <summary>A vector on the axes as seen at rest.</summary>
    internal Complex ToRest(Complex onAxes) => onAxes * Along;

    /// <summary>What of a vector on the axes lies where the stator is closed.</summary>
    internal Complex Closed(Complex onAxes) => new(AlongClosed ? onAxes.Real : 0, AcrossClosed ? onAxes.Imaginary : 0);
}
