using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;
using Runup.Commissioning.Tests.Bench;
using Runup.Profiles;

namespace Runup.Commissioning.Tests.Entry;

/// <summary>An entry that is cut off at any moment, and the one that goes on.</summary>
public sealed class CutOffTests
{
    // Between any two operations of link and record, before and after each took effect: as if the process were killed there.
    [Fact]
    public void Wherever_an_entry_is_cut_off_the_next_one_finishes_it_and_names_what_was_under_way()
    {
        var moments = Moments(int.MaxValue, out _);
        moments.ShouldBeGreaterThan(100);
        for (var k = 0; k < moments; k++)
        {
            Moments(k, out var site);
            var history = EntryHistory.Of(site.Records.All);
            var next = site.Enter();

            next.Ending.ShouldBeOfType<EntryEnding.Finished>($"cut at {k}");
            next.Failed.ShouldBeEmpty($"cut at {k}");
            Held(site, k);
            AsFoundSurvives(site, k);
            JournalIsWhole(site.Records, $"cut at {k}");
            if (history.Open?.UnderWay is { } under)
            {
                next.Resumed!.UnderWay.ShouldBe(under.Parameter, $"cut at {k}");
            }
        }
    }

    [Fact]
    public void An_entry_that_is_cut_off_again_and_again_still_comes_to_its_end()
    {
        for (var every = 7; every < 23; every += 5)
        {
            var site = new BenchSite();
            var cuts = 0;
            for (var done = false; !done && cuts < 60; cuts++)
            {
                // A little further each time, since every run reads all first.
                done = Runs(site, every + (3 * cuts)) is { Ending: EntryEnding.Finished };
            }

            Held(site, every);
            AsFoundSurvives(site, every);
            JournalIsWhole(site.Records, $"cut at {every}");
        }
    }

    [Fact]
    public void A_drive_that_lost_its_values_between_the_cut_and_the_next_entry_is_written_again()
    {
        var moments = Moments(int.MaxValue, out _);
        for (var k = 0; k < moments; k += 3)
        {
            Moments(k, out var site);
            site.Drive.PowerCycle();
            site.Enter().Failed.ShouldBeEmpty($"cut at {k}");
            Held(site, k);
        }
    }

    [Fact]
    public void What_was_written_before_the_cut_is_not_counted_again()
    {
        Moments(60, out var site);
        var history = EntryHistory.Of(site.Records.All);
        history.Open!.Ended.ShouldNotBeEmpty();
        var next = site.Enter();
        next.WrittenBefore.ShouldNotBeEmpty();
        next.Written.ShouldNotBeEmpty();
        next.Written.Intersect(next.WrittenBefore, StringComparer.Ordinal).ShouldBeEmpty();
        next.Written.Concat(next.WrittenBefore).Order().ShouldBe(next.Verified.Order());
    }

    [Fact]
    public void An_entry_of_another_sheet_names_what_the_cut_off_one_left_under_way()
    {
        var site = new BenchSite();
        Runs(site, 60);
        var open = EntryHistory.Of(site.Records.All).Open!;
        var other = EntrySheet.Of([new EntryLine(BenchMake.Of("180"), 5)]);
        var report = site.Enter(BenchSite.Job(other));
        report.Resumed!.SameSheet.ShouldBeFalse();
        report.Resumed.UnderWay.ShouldBe(open.UnderWay?.Parameter);
        report.Written.ShouldBe(["180"]);
        report.Ending.ShouldBeOfType<EntryEnding.Finished>();
    }

    [Property(MaxTest = 200)]
    public Property Whatever_is_lost_or_refused_no_line_ends_unverified_and_unnamed() => Prop.ForAll(
        Gen.Choose(0, 19).ArrayOf(150).Zip(Gen.Choose(0, 3)).ToArbitrary(),
        script =>
        {
            var (luck, lies) = script;
            var site = new BenchSite();
            var i = 0;
            site.Script = op => op.Kind is "status" or "identify" || i >= luck.Length ? Mishap.None : luck[i++] switch { 0 => Mishap.ReplyLost, 1 => Mishap.RequestLost, 2 => Mishap.Refused, 3 => i % 7 == 0 ? Mishap.CablePulled : Mishap.None, _ => Mishap.None };
            foreach (var number in ((string[])["105", "151", "170"]).Take(lies))
            {
                site.Drive.Lies[number] = raw => raw + 1;
            }

            var report = site.Enter();
            EntryTests.Lists(report).ShouldBe(BenchSite.Sheet().Lines.Select(l => l.Number).Order());
            var raws = BenchSite.Sheet().Lines.ToDictionary(l => l.Number, l => l.Raw);
            foreach (var number in report.Verified.Concat(report.Skipped))
            {
                // A value that another line's write changed unseen, after a lost reading, is found by the reading after the last write.
                if (report.Ending is EntryEnding.Finished)
                {
                    site.Drive.Held[number].ShouldBe(raws[number], number);
                }
            }

            foreach (var line in raws.Where(r => site.Drive.Held[r.Key] != r.Value && report.Ending is EntryEnding.Finished))
            {
                report.Failed.ShouldContain(f => f.Parameter == line.Key);
            }

            JournalIsWhole(site.Records, "at the end");
        });

    // Runs until the k-th moment; how many moments there were.
    private static int Moments(int k, out BenchSite site)
    {
        site = new BenchSite();
        var count = 0;
        void Cut()
        {
            if (count++ == k)
            {
                throw new CutOffException();
            }
        }

        site.Cut = Cut;
        site.Records.Cut = Cut;
        try
        {
            site.Enter();
        }
        catch (CutOffException)
        {
            // The process is gone.
        }

        site.Cut = null;
        site.Records.Cut = null;
        return count;
    }

    private static EntryReport? Runs(BenchSite site, int moments)
    {
        var left = moments;
        void Cut()
        {
            if (left-- == 0)
            {
                throw new CutOffException();
            }
        }

        site.Cut = Cut;
        site.Records.Cut = Cut;
        try
        {
            return site.Enter();
        }
        catch (CutOffException)
        {
            return null;
        }
        finally
        {
            site.Cut = null;
            site.Records.Cut = null;
        }
    }

    private static void Held(BenchSite site, int k)
    {
        foreach (var line in BenchSite.Sheet().Lines)
        {
            site.Drive.Held[line.Number].ShouldBe(line.Raw, $"{line.Number}, cut at {k}");
            site.Drive.Kept[line.Number].ShouldBe(line.Raw, $"{line.Number} kept, cut at {k}");
        }
    }

    private static void AsFoundSurvives(BenchSite site, int k)
    {
        var factory = ParameterValues.Defaults(BenchMake.Profile, BenchMake.Size);
        var asFound = EntryHistory.Of(site.Records.All).AsFound[site.Drive.Identity];
        foreach (var parameter in BenchMake.Profile.Parameters.Where(p => p.IsKept))
        {
            asFound[parameter.Number].ShouldBe(factory[parameter.Number], $"{parameter.Number}, cut at {k}");
        }

        site.Records.Bodies.OfType<RecordBody.ParametersRead>().Count(r => r.Moment == "as-found").ShouldBe(1, $"cut at {k}");
    }

    // Every write that was intended has its end in the record, and of the same parameter.
    internal static void JournalIsWhole(BenchRecords records, string why)
    {
        string? under = null;
        foreach (var body in records.Bodies)
        {
            switch (body)
            {
                case RecordBody.WriteIntended intended:
                    under.ShouldBeNull(why);
                    under = intended.Parameter;
                    break;
                case RecordBody.WriteEnded ended:
                    ended.Parameter.ShouldBe(under, why);
                    under = null;
                    break;
            }
        }

        under.ShouldBeNull(why);
    }
}
