using Runup.Commissioning.Survey;

namespace Runup.Commissioning.Handover;

/// <summary>A surveyed datum for a reader.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">The value in both sets of units.</param>
/// <param name="AsWritten">What the person wrote, where it reads otherwise; else null.</param>
/// <param name="From">Where it comes from.</param>
/// <param name="Note">The surveyor's note and stated error, or null.</param>
/// <param name="Photo">Name of the photo that shows it, or null.</param>
public sealed record SurveyRow(string Name, string Value, string? AsWritten, Provenance From, string? Note, string? Photo = null);

/// <summary>A part of the survey.</summary>
/// <param name="Title">What part.</param>
/// <param name="Rows">What was surveyed.</param>
/// <param name="Missing">Names of what was not.</param>
public sealed record SurveyPart(string Title, IReadOnlyList<SurveyRow> Rows, IReadOnlyList<string> Missing);
