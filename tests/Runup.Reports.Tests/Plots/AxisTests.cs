using Runup.Reports.Plots;

namespace Runup.Reports.Tests.Plots;

public sealed class AxisTests
{
    [Fact]
    public void An_axis_from_zero_reaches_down_to_what_lies_below_it()
    {
        var axis = PlotAxis.FromZero("frequency, Hz", [0, 50, -50]);

        axis.Low.ShouldBe(-52.5, 1e-9);
        axis.High.ShouldBe(52.5, 1e-9);
    }

    [Fact]
    public void An_axis_from_zero_begins_there_where_nothing_lies_below() => PlotAxis.FromZero("current, A", [3, 8]).Low.ShouldBe(0);
}
