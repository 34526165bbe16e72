using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Tests.Bench;

namespace Runup.Commissioning.Tests.FirstRun;

/// <summary>Whatever goes wrong, and whenever, the motor comes to a stop soon and nothing is left unnamed.</summary>
public sealed class FirstRunPropertyTests
{
    /// <summary>What goes wrong.</summary>
    /// <param name="Mishap">With which exchange.</param>
    /// <param name="At">At which exchange.</param>
    /// <param name="For">For how many exchanges.</param>
    /// <param name="HoldEndsAfterMs">After how long each hold ends.</param>
    /// <param name="Deaf">Whether the drive ignores the stop from then on.</param>
    public sealed record Trouble(int Mishap, int At, int For, int HoldEndsAfterMs, bool Deaf);

    public static Arbitrary<Trouble> Troubles() => (
        from mishap in Gen.Choose(0, 4)
        from at in Gen.Choose(0, 3000)
        from length in Gen.Choose(1, 4)
        from hold in Gen.Choose(500, 60_000)
        from deaf in Gen.Elements(true, false, false)
        select new Trouble(mishap, at, length, hold, deaf)).ToArbitrary();

    [Property(MaxTest = 150, Arbitrary = [typeof(FirstRunPropertyTests)])]
    public void The_motor_comes_to_a_stop_and_what_is_left_is_named(Trouble trouble)
    {
        var site = new FirstRunSite();
        var own = site.Drive.Held;
        var exchanges = 0;
        site.Bench.Script = _ =>
        {
            if (exchanges++ < trouble.At || exchanges > trouble.At + trouble.For)
            {
                return Mishap.None;
            }

            site.Drive.IgnoresStop |= trouble.Deaf;
            return (Mishap)trouble.Mishap;
        };
        site.Person.Declines.Add("step-again");
        List<TimeSpan> taken = [];
        List<TimeSpan> released = [];
        site.Person.OnHold = (hold, _) =>
        {
            site.Drive.Pass();
            taken.Add(site.Drive.Now);
            Ends(hold);
        };
        void Ends(RunHold hold)
        {
            var release = site.Bench.Time.CreateTimer(_ =>
            {
                if (hold.IsHeld())
                {
                    site.Drive.Pass();
                    released.Add(site.Drive.Now);
                    hold.Release(HoldEnd.Released);
                }
            }, null, TimeSpan.FromMilliseconds(trouble.HoldEndsAfterMs), Timeout.InfiniteTimeSpan);

            // Kept by the hold: a timer that nobody keeps is swept away before its time.
            hold.Lost.Register(release.Dispose);
        }

        var report = site.Run(TimeSpan.FromMilliseconds(10));
        site.Later(TimeSpan.FromSeconds(40));

        site.Drive.Hertz.ShouldBe(0, 1e-9, $"{trouble}: {report.Ending}");
        site.Drive.FaultResetSeen.ShouldBeFalse();
        site.Runs.ShouldAllBe(r => r.Hz > 0 && r.Hz <= 50);
        foreach (var end in released)
        {
            // The next hold may be taken at the very moment at which this one ends.
            var next = taken.Where(t => t >= end).Append(TimeSpan.MaxValue).Min();
            site.Runs.ShouldAllBe(r => r.At <= end || r.At >= next, $"{trouble}: a run command after the hold was over");
        }

        foreach (var number in own.Numbers)
        {
            if (site.Drive.Held[number] != own[number])
            {
                report.NotPutBack.Keys.ShouldContain(number, $"{trouble}: {report.Ending}");
            }
        }

        // A drive that does not obey: at most two looks, and then silence.
        var stop = site.Log.FindLastIndex(l => l.Op is { Kind: "command", What: "Stop" });
        if (report.Ending is FirstRunEnding.FellSilent { Why: var why } && (why.Contains("obey") || why.Contains("not answered")))
        {
            site.Log.Skip(stop + 1).Count().ShouldBeLessThanOrEqualTo(2, $"{trouble}: {report.Ending}");
            (site.Log[^1].At - site.Log[stop].At).ShouldBeLessThanOrEqualTo(TimeSpan.FromMilliseconds(200));
        }
    }
}
