namespace Runup.Commissioning.Survey;

/// <summary>A photo of the set.</summary>
/// <param name="File">Its name in the job's folder.</param>
/// <param name="Note">What it shows, or null.</param>
public sealed record SetPhoto(string File, string? Note);
