using System.Globalization;
using Runup.Bench.Engine;

// points CASE: the run's points for comparison; time CASE: "single member" in microseconds.
return args switch
{
    ["points", "a"] => Print(RampCase.Points()),
    ["time", "a"] => Print([string.Create(CultureInfo.InvariantCulture, $"{RampCase.SingleUs():f3} {RampCase.MemberUs(1024):f4} {RampCase.LaneUs():f4}")]),
    _ => Usage(),
};

static int Print(IEnumerable<string> lines)
{
    foreach (var line in lines)
    {
        Console.WriteLine(line);
    }

    return 0;
}

static int Usage()
{
    Console.Error.WriteLine("points|time|figures a|b|c, or drives");
    return 2;
}
