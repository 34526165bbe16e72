using System.Collections.Immutable;

namespace Runup.Modbus.Identification;

/// <summary>One reply to read device identification; a stream may need several.</summary>
/// <param name="Asked">The code of the request, echoed.</param>
/// <param name="Conformity">What the device says it can be asked for.</param>
/// <param name="Next">The object to ask for next, or null when nothing follows.</param>
/// <param name="Objects">The objects of this reply.</param>
public sealed record IdentificationPage(
    ReadDeviceIdCode Asked,
    ConformityLevel Conformity,
    IdentificationObjectId? Next,
    ImmutableArray<IdentificationObject> Objects)
{
    /// <inheritdoc />
    public bool Equals(IdentificationPage? other) =>
        other is not null && Asked == other.Asked && Conformity == other.Conformity && Next == other.Next
        && Objects.AsSpan().SequenceEqual(other.Objects.AsSpan());

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Asked, Conformity, Next, Objects.Length);
}
