namespace Runup.Files.Photos;

/// <summary>What came of reading a photo; a closed set.</summary>
public abstract record PhotoReading
{
    private PhotoReading()
    {
    }

    /// <summary>A photo, made anew of its pixels alone: upright, no larger than a report needs, without anything else that the file said.</summary>
    /// <param name="Jpeg">As JPEG.</param>
    /// <param name="Width">Pixels across.</param>
    /// <param name="Height">Pixels down.</param>
    /// <param name="OriginalSha256">Checksum of the file that it was made of, in hex.</param>
    public sealed record Taken(ReadOnlyMemory<byte> Jpeg, int Width, int Height, string OriginalSha256) : PhotoReading;

    /// <summary>No photo.</summary>
    /// <param name="Why">Why, in words.</param>
    public sealed record Refused(string Why) : PhotoReading;
}
