namespace Runup.Outside.Tests.Engineering;

/// <summary>Units as the books convert them.</summary>
internal static class Horsepower
{
    /// <summary>W in a horsepower.</summary>
    internal const double Watts = 745.69987;

    /// <summary>W in a metric horsepower, which Indian books call hp.</summary>
    internal const double MetricWatts = 735.49875;

    /// <summary>N·m in a pound-foot.</summary>
    internal const double PoundFoot = 1.3558179;
}
