using System.Globalization;
using Runup.Bench.Engine;

// points CASE: the run's points for comparison; show CASE: what happens in it; figures CASE: for the peer; time CASE: "single member lane" in microseconds; single CASE and lane CASE: one of them alone; drives: simulated drives; statistics: by BenchmarkDotNet.
return args switch
{
    ["points", "a"] => Print(RampCase.Points()),
    ["points", "b"] => Print(DriveCase.B.Points()),
    ["points", "c"] => Print(DriveCase.C.Points()),
    ["show", "b"] => Print(DriveCase.B.Shown()),
    ["show", "c"] => Print(DriveCase.C.Shown()),
    ["figures", "b"] => Print(DriveCase.B.Figures()),
    ["figures", "c"] => Print(DriveCase.C.Figures()),
    ["time", "a"] => Times(RampCase.SingleUs(), RampCase.MemberUs(1024), RampCase.LaneUs()),
    ["time", "b"] => Times(DriveCase.B.SingleUs(), DriveCase.B.MemberUs(1024), DriveCase.B.LaneUs()),
    ["time", "c"] => Times(DriveCase.C.SingleUs(), DriveCase.C.MemberUs(1024), DriveCase.C.LaneUs()),
    ["single", "b"] => Print([Figure(DriveCase.B.SingleUs())]),
    ["single", "c"] => Print([Figure(DriveCase.C.SingleUs())]),
    ["lane", "b"] => Print([Figure(DriveCase.B.LaneUs())]),
    ["lane", "c"] => Print([Figure(DriveCase.C.LaneUs())]),
    ["statistics"] => Spread(),
    ["drives"] => Print(ManyDrives.Seconds()),
    _ => Usage(),
};

static int Times(double singleUs, double memberUs, double laneUs) =>
    Print([string.Create(CultureInfo.InvariantCulture, $"{singleUs:f3} {memberUs:f4} {laneUs:f4}")]);

static string Figure(double us) => string.Create(CultureInfo.InvariantCulture, $"{us:f3}");

static int Spread()
{
    Statistics.Run();
    return 0;
}

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
    Console.Error.WriteLine("points|show|figures|time a|b|c, single|lane b|c, or drives, or statistics");
    return 2;
}
