namespace Runup.Profiles;

/// <summary>Where and how a drive is commanded over the bus, after IEC 61800-7-201.</summary>
/// <param name="Word">Parameter with the control word.</param>
/// <param name="Reference">Parameter with the reference, in Hz, or in rpm of the shaft at no slip.</param>
/// <param name="Status">Parameter with the status word.</param>
/// <param name="ReverseBit">Bit of the control word that reverses; null where the sign of the reference does.</param>
/// <param name="RampBits">Whether bits 4 to 6 must be set for the ramp to follow the reference (velocity mode).</param>
public sealed record CommandInterface(Parameter Word, Parameter Reference, Parameter Status, int? ReverseBit, bool RampBits);

/// <summary>Direction in which a motor is told to turn.</summary>
public enum Rotation
{
    /// <summary>Forward.</summary>
    Forward,

    /// <summary>Reverse.</summary>
    Reverse,
}
