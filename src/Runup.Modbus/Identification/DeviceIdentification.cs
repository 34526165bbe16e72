using System.Collections.Immutable;
using System.Text;

namespace Runup.Modbus.Identification;

/// <summary>What a device tells about itself by function 43/14: three mandatory objects, optional ones, and its own from 80h. Stream and individual access are both offered. Immutable.</summary>
public sealed class DeviceIdentification
{
    private const int Head = 7;
    private readonly ImmutableSortedDictionary<byte, ImmutableArray<byte>> _objects;

    /// <summary>The three mandatory objects.</summary>
    /// <param name="vendorName">ASCII, at most <see cref="ModbusLimits.IdentificationObjectLength"/> characters, as every object.</param>
    /// <param name="productCode">The same.</param>
    /// <param name="majorMinorRevision">The same.</param>
    public DeviceIdentification(string vendorName, string productCode, string majorMinorRevision)
        : this(ImmutableSortedDictionary<byte, ImmutableArray<byte>>.Empty
            .Add(0, Ascii(vendorName))
            .Add(1, Ascii(productCode))
            .Add(2, Ascii(majorMinorRevision)))
    {
    }

    private DeviceIdentification(ImmutableSortedDictionary<byte, ImmutableArray<byte>> objects) => _objects = objects;

    /// <summary>The highest category any object belongs to, with individual access.</summary>
    public ConformityLevel Conformity =>
        ConformityLevel.WithIndividualAccess(new IdentificationObjectId(_objects.Keys.Last()).Category);

    /// <summary>The same with one object more, or changed.</summary>
    /// <param name="id">Which object.</param>
    /// <param name="text">ASCII.</param>
    public DeviceIdentification With(IdentificationObjectId id, string text) => new(_objects.SetItem(id.Value, Ascii(text)));

    /// <summary>Whether an object is there.</summary>
    /// <param name="id">Which object.</param>
    public bool Has(IdentificationObjectId id) => _objects.ContainsKey(id.Value);

    /// <summary>Writes the PDU of a reply: as many objects as fit, and where to go on. A stream that is to begin with an object that is not there begins anew; a category the device does not have is answered with the one it has.</summary>
    internal int Encode(ReadDeviceIdCode code, IdentificationObjectId from, Span<byte> pdu)
    {
        pdu[0] = (byte)FunctionCode.EncapsulatedInterface;
        pdu[1] = MeiType.ReadDeviceIdentification;
        pdu[2] = (byte)code;
        pdu[3] = Conformity.Value;
        pdu[4] = 0;
        pdu[5] = 0;
        pdu[6] = 0;
        if (code == ReadDeviceIdCode.Individual)
        {
            return Append(pdu, Head, from.Value, _objects[from.Value]);
        }

        var first = Has(from) && from.Category <= code ? from.Value : (byte)0;
        var length = Head;
        foreach (var (id, value) in _objects)
        {
            if (id < first || new IdentificationObjectId(id).Category > code)
            {
                continue;
            }

            if (length + 2 + value.Length > ModbusLimits.PduLength)
            {
                pdu[4] = 0xFF;
                pdu[5] = id;
                break;
            }

            length = Append(pdu, length, id, value);
        }

        return length;
    }

    private static int Append(Span<byte> pdu, int length, byte id, ImmutableArray<byte> value)
    {
        pdu[6]++;
        pdu[length] = id;
        pdu[length + 1] = (byte)value.Length;
        value.AsSpan().CopyTo(pdu[(length + 2)..]);
        return length + 2 + value.Length;
    }

    private static ImmutableArray<byte> Ascii(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > ModbusLimits.IdentificationObjectLength)
        {
            throw new ArgumentException($"An identification object holds at most {ModbusLimits.IdentificationObjectLength} characters.", nameof(text));
        }

        return text.All(char.IsAscii)
            ? [.. Encoding.ASCII.GetBytes(text)]
            : throw new ArgumentException("An identification object is ASCII.", nameof(text));
    }
}
