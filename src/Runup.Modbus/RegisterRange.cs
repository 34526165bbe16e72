using System.Runtime.InteropServices;

namespace Runup.Modbus;

/// <summary>One or more neighbouring registers, all within the 65,536 addresses. The default is the one register at address 0.</summary>
[StructLayout(LayoutKind.Auto)]
public readonly record struct RegisterRange
{
    private readonly ushort _countLessOne;

    /// <summary>Names a range.</summary>
    /// <param name="start">The lowest address.</param>
    /// <param name="count">How many registers, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is below 1 or the range leaves the address space.</exception>
    public RegisterRange(RegisterAddress start, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, ModbusLimits.AddressSpace - start.Value);
        Start = start;
        _countLessOne = (ushort)(count - 1);
    }

    /// <summary>Names a range by its lowest address.</summary>
    /// <param name="start">The lowest address.</param>
    /// <param name="count">How many registers, at least 1.</param>
    public RegisterRange(ushort start, int count)
        : this(new RegisterAddress(start), count)
    {
    }

    /// <summary>The lowest address.</summary>
    public RegisterAddress Start { get; }

    /// <summary>How many registers.</summary>
    public int Count => _countLessOne + 1;

    /// <summary>The highest address.</summary>
    public RegisterAddress Last => new((ushort)(Start.Value + _countLessOne));

    /// <summary>Whether an address lies in the range.</summary>
    /// <param name="address">The address asked for.</param>
    public bool Contains(RegisterAddress address) => address.Value >= Start.Value && address.Value <= Last.Value;

    /// <inheritdoc />
    public override string ToString() => Count == 1 ? $"{Start}" : $"{Start}-{Last}";
}
