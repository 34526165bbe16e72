namespace Runup.Commissioning.Handover;

/// <summary>A photo as a report shows it.</summary>
/// <param name="Name">Its name in the job's folder.</param>
/// <param name="Sha256">Checksum of what is shown, in hex.</param>
/// <param name="Jpeg">As JPEG.</param>
/// <param name="Width">Pixels across.</param>
/// <param name="Height">Pixels down.</param>
public sealed record ReportPhoto(string Name, string Sha256, ReadOnlyMemory<byte> Jpeg, int Width, int Height);
