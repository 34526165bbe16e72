namespace Runup.DriveLink.Tests;

public sealed class LinkTextTests
{
    [Theory]
    [InlineData("tcp://10.0.0.7:502/1", "10.0.0.7", 502, 1)]
    [InlineData(" tcp://drive-3.local:1502/247 ", "drive-3.local", 1502, 247)]
    [InlineData("TCP://10.0.0.7", "10.0.0.7", 502, 1)]
    [InlineData("tcp://[fe80::1]:502/0", "fe80::1", 502, 0)]
    public void A_link_over_TCP_is_read(string text, string host, int port, byte unit) =>
        LinkText.Read(text).ShouldBe(new LinkText.Address(new(host, port, unit)));

    [Theory]
    [InlineData("tcp://10.0.0.7:502/1")]
    [InlineData("tcp://[fe80::1]:502/0")]
    public void An_address_writes_as_it_reads(string text) =>
        LinkText.Read(text).ShouldBeOfType<LinkText.Address>().Of.ToString().ShouldBe(text);

    [Theory]
    [InlineData("rtutcp://10.0.0.7:502/1")]
    [InlineData("rtu:/dev/ttyUSB0?baud=19200&parity=even&stop=1&unit=1")]
    [InlineData("rtu:COM3")]
    public void A_serial_line_is_known_and_not_spoken_yet(string text) =>
        LinkText.Read(text).ShouldBeOfType<LinkText.NotYet>().Why.ShouldContain("tcp://HOST:PORT/UNIT");

    [Theory]
    [InlineData("")]
    [InlineData("10.0.0.7")]
    [InlineData("http://10.0.0.7/1")]
    [InlineData("tcp://")]
    [InlineData("tcp:///1")]
    [InlineData("tcp://10.0.0.7:0/1")]
    [InlineData("tcp://10.0.0.7:70000/1")]
    [InlineData("tcp://10.0.0.7:502/256")]
    [InlineData("tcp://10.0.0.7:502/-1")]
    [InlineData("tcp://10.0.0.7:502/one")]
    [InlineData("tcp://user@10.0.0.7:502/1")]
    [InlineData("tcp://10.0.0.7:502/1?x=1")]
    public void Anything_else_says_what_would_do(string text) => LinkText.Read(text).ShouldBeOfType<LinkText.Wrong>().Why.ShouldNotBeEmpty();
}
