using Runup.Quantities;

namespace Runup.Commissioning.Survey;

/// <summary>Where a datum comes from.</summary>
public enum Provenance
{
    /// <summary>Not said.</summary>
    Unstated,

    /// <summary>Read on a rating plate.</summary>
    Plate,

    /// <summary>Taken from a drawing or data sheet.</summary>
    Drawing,

    /// <summary>Measured on site.</summary>
    Measured,

    /// <summary>Told by somebody.</summary>
    Told,

    /// <summary>Assumed.</summary>
    Assumed,
}

/// <summary>A surveyed value with where it comes from and how far it may be wrong.</summary>
/// <typeparam name="T">What was surveyed.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="From">Where it comes from.</param>
/// <param name="Error">Relative error that the surveyor states, or null.</param>
/// <param name="Note">The surveyor's note, or null.</param>
/// <param name="AsWritten">The value as the person wrote it.</param>
/// <param name="RoundingSi">Half of the last printed digit in SI; zero where the value has no digits.</param>
/// <param name="Photo">A photo that shows it, by its name in the job's folder, or null.</param>
public sealed record Datum<T>(
    T Value,
    Provenance From = Provenance.Unstated,
    Fraction? Error = null,
    string? Note = null,
    string? AsWritten = null,
    double RoundingSi = 0,
    string? Photo = null);
