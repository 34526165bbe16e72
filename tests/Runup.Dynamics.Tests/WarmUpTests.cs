namespace Runup.Dynamics.Tests;

public sealed class WarmUpTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Its_set_is_one_that_can_be_simulated(bool ofMany) => Should.NotThrow(() => WarmUp.Run(ofMany));
}
