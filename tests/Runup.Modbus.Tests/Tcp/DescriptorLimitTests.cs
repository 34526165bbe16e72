using System.Globalization;
using Runup.Modbus.Tcp.Linux;

namespace Runup.Modbus.Tests.Tcp;

public sealed class DescriptorLimitTests
{
    [Fact]
    public void Limit_is_the_one_the_system_shows()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "read from /proc, which is there on Linux only");
        var shown = File.ReadLines("/proc/self/limits").Single(line => line.StartsWith("Max open files", StringComparison.Ordinal))
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)[3];
        LibC.DescriptorLimit.ShouldBe(int.Parse(shown, CultureInfo.InvariantCulture));
    }
}
