using System.Collections.Immutable;
using System.Text;

namespace Runup.Modbus.Identification;

/// <summary>One object of a device's identification as it came over the wire.</summary>
/// <param name="Id">Which object.</param>
/// <param name="Bytes">Its value; the specification wants ASCII for all objects below 80h.</param>
public sealed record IdentificationObject(IdentificationObjectId Id, ImmutableArray<byte> Bytes)
{
    /// <summary>The value as ASCII; bytes that are not ASCII read as '?'.</summary>
    public string Text => Encoding.ASCII.GetString(Bytes.AsSpan());

    /// <inheritdoc />
    public bool Equals(IdentificationObject? other) =>
        other is not null && Id == other.Id && Bytes.AsSpan().SequenceEqual(other.Bytes.AsSpan());

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Id, Bytes.Length);
}
