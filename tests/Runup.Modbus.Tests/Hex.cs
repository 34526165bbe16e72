namespace Runup.Modbus.Tests;

internal static class Hex
{
    public static byte[] Bytes(string spaced) => Convert.FromHexString(spaced.Replace(" ", "", StringComparison.Ordinal));

    public static string Text(ReadOnlySpan<byte> bytes) => string.Join(' ', bytes.ToArray().Select(b => $"{b:X2}"));
}
