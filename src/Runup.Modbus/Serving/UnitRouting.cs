namespace Runup.Modbus.Serving;

/// <summary>What a server does with a request for a unit it does not know.</summary>
public enum UnknownUnit
{
    /// <summary>It answers with exception 0B, as a gateway does whose target does not respond.</summary>
    Refuse,

    /// <summary>It says nothing, as a serial line does.</summary>
    Silence,
}

/// <summary>Which device answers for which unit identifier.</summary>
public sealed class UnitRouting
{
    private readonly IModbusDevice?[] _devices = new IModbusDevice?[256];

    private UnitRouting(UnknownUnit unknown) => Unknown = unknown;

    /// <summary>What happens to a request for a unit that is not here.</summary>
    public UnknownUnit Unknown { get; }

    /// <summary>One device answers whatever the unit is.</summary>
    /// <param name="device">The device.</param>
    public static UnitRouting Any(IModbusDevice device)
    {
        ArgumentNullException.ThrowIfNull(device);
        var routing = new UnitRouting(UnknownUnit.Refuse);
        Array.Fill(routing._devices, device);
        return routing;
    }

    /// <summary>One device under its own unit identifier and, as the TCP guide has it for a device that is no gateway, under 0 and 255.</summary>
    /// <param name="device">The device.</param>
    /// <param name="unit">Its unit identifier.</param>
    /// <param name="unknown">What happens to other units.</param>
    public static UnitRouting Device(IModbusDevice device, UnitId unit, UnknownUnit unknown = UnknownUnit.Refuse) =>
        Units(new Dictionary<UnitId, IModbusDevice> { [new UnitId(0)] = device, [UnitId.TcpDevice] = device, [unit] = device }, unknown);

    /// <summary>Several devices, each under the units named and no other.</summary>
    /// <param name="devices">Who answers for which unit.</param>
    /// <param name="unknown">What happens to other units.</param>
    public static UnitRouting Units(IReadOnlyDictionary<UnitId, IModbusDevice> devices, UnknownUnit unknown = UnknownUnit.Refuse)
    {
        ArgumentNullException.ThrowIfNull(devices);
        var routing = new UnitRouting(unknown);
        foreach (var (unit, device) in devices)
        {
            routing._devices[unit.Value] = device;
        }

        return routing;
    }

    internal IModbusDevice? For(UnitId unit) => _devices[unit.Value];
}
