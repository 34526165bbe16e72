namespace Runup.Modbus.Identification;

internal static class MeiType
{
    public const byte ReadDeviceIdentification = 0x0E;
}
