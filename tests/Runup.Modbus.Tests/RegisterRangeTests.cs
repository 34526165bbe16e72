namespace Runup.Modbus.Tests;

public sealed class RegisterRangeTests
{
    [Fact]
    public void Default_is_the_first_register()
    {
        default(RegisterRange).ShouldBe(new RegisterRange(0, 1));
        default(RegisterRange).Count.ShouldBe(1);
    }

    [Fact]
    public void All_registers_are_a_range() => new RegisterRange(0, 65_536).Last.ShouldBe(new RegisterAddress(65_535));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0, -1)]
    [InlineData(0, 65_537)]
    [InlineData(65_535, 2)]
    public void Range_that_is_empty_or_leaves_the_addresses_is_not_made(int start, int count) =>
        Should.Throw<ArgumentOutOfRangeException>(() => new RegisterRange((ushort)start, count));

    [Fact]
    public void Range_contains_its_ends_and_no_more()
    {
        var range = new RegisterRange(10, 3);
        range.Contains(new RegisterAddress(9)).ShouldBeFalse();
        range.Contains(new RegisterAddress(10)).ShouldBeTrue();
        range.Contains(new RegisterAddress(12)).ShouldBeTrue();
        range.Contains(new RegisterAddress(13)).ShouldBeFalse();
    }
}
