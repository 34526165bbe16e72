using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Entry.ByHand;
using Runup.Commissioning.Records;
using Runup.Commissioning.Tests.Bench;
using Runup.Profiles;

namespace Runup.Commissioning.Tests.Entry.ByHand;

/// <summary>An entry by hand that is cut off or left at any moment, and the one that goes on.</summary>
public sealed class CutOffByHandTests
{
    [Fact]
    public async Task Wherever_it_is_cut_off_the_next_one_finishes_it()
    {
        var (moments, _) = await Cut(int.MaxValue);
        moments.ShouldBeGreaterThan(100);
        for (var k = 0; k < moments; k++)
        {
            var (_, hand) = await Cut(k);
            await Finishes(hand, $"cut at {k}");
        }
    }

    [Fact]
    public async Task Wherever_the_person_stops_all_is_kept_and_no_answer_is_asked_for_twice()
    {
        var questions = (await Quit(int.MaxValue)).Display.Asked.Count;
        questions.ShouldBeGreaterThan(30);
        for (var k = 0; k < questions; k++)
        {
            var hand = await Quit(k);
            var before = hand.Display.Asked.Take(k).Where(q => !q.SecondLook).Select(q => (q.For, q.Parameter.Number)).ToHashSet();
            var left = hand.Display.Asked[k];
            hand.Display.Asked.Clear();
            await Finishes(hand, $"stopped at {k}");
            hand.Display.Asked.Where(q => (q.For, q.Parameter.Number) != (left.For, left.Parameter.Number)).ShouldNotContain(q => before.Contains(new(q.For, q.Parameter.Number)), $"stopped at {k}");
        }
    }

    [Fact]
    public async Task Cut_off_again_and_again_it_still_comes_to_its_end()
    {
        var hand = new BenchHand();
        var cuts = 0;
        for (var done = false; !done; cuts++)
        {
            cuts.ShouldBeLessThan(100);
            done = await Runs(hand, 20) is { Ending: EntryEnding.Finished, Failed: [] };
        }

        cuts.ShouldBeGreaterThan(5);
        hand.HoldsTheSheet("");
    }

    [Fact]
    public async Task A_look_that_was_broken_off_goes_on_in_an_entry()
    {
        var hand = new BenchHand();
        hand.TypesOnce(LookFor.Found, "150", (string?)null);
        (await hand.Read()).ShouldBeOfType<DriveRead.BrokenOff>();
        var seen = hand.Display.Asked.Count;
        hand.Display.Asked.Clear();
        (await hand.Enter()).Failed.ShouldBeEmpty();
        hand.Questions(LookFor.Found).ShouldNotContain(q => q.Parameter.Number == "105");
        seen.ShouldBeGreaterThan(3);
        hand.Records.Bodies.OfType<RecordBody.ParametersRead>().First().Values.Count.ShouldBe(ToLookAt.Of(BenchMake.Profile, BenchSite.Sheet(), all: false).Count);
    }

    [Property(MaxTest = 150)]
    public Property Whatever_is_typed_each_line_has_one_fate_and_what_counts_as_seen_is_in_the_drive() => Prop.ForAll(
        Gen.Choose(0, 40).ArrayOf(120).ToArbitrary(),
        script =>
        {
            var (hand, i) = (new BenchHand(), 0);
            hand.Display.Types = q => i >= script.Length ? BenchDisplay.Honest : script[i++] switch
            {
                0 => "q",
                1 or 2 => "b",
                3 => "s no reason to",
                4 => "nonsense",
                5 => "s",
                // A person who misreads once and not twice; of what was to be entered, another value.
                6 when q.For == LookFor.Entered && q.Parameter.Form is ParameterForm.Numeric => q.Factory.Display,
                _ => BenchDisplay.Honest,
            };
            for (var calls = 0; calls < 40 && hand.Enter().GetAwaiter().GetResult() is var report; calls++)
            {
                EntryTests.Lists(report).Concat(report.VerifiedByEye).Order().ShouldBe(BenchSite.Sheet().Lines.Select(l => l.Number).Order());
                CutOffTests.JournalIsWhole(hand.Records, $"call {calls}");
                var raws = BenchSite.Sheet().Lines.ToDictionary(l => l.Number, l => l.Raw);
                report.VerifiedByEye.ShouldAllBe(n => hand.Drive.Held[n] == raws[n]);
                if (report is { Ending: EntryEnding.Finished, Failed: [] })
                {
                    break;
                }
            }

            hand.HoldsTheSheet("at the end");
        });

    private static async Task Finishes(BenchHand hand, string why)
    {
        (hand.Display.Cut, hand.Records.Cut, hand.Display.Types) = (null, null, _ => BenchDisplay.Honest);
        var report = await hand.Enter();
        report.Ending.ShouldBeOfType<EntryEnding.Finished>(why);
        report.Failed.ShouldBeEmpty(why);
        hand.HoldsTheSheet(why);
        EntryHistory.Of(hand.Records.All).AsFound.Single().Value["105"].ShouldBe(230, why);
        EntryTests.Lists(report).Concat(report.VerifiedByEye).Order().ShouldBe(BenchSite.Sheet().Lines.Select(l => l.Number).Order(), why);
        CutOffTests.JournalIsWhole(hand.Records, why);
    }

    private static async Task<BenchHand> Quit(int k)
    {
        var hand = new BenchHand();
        var count = 0;
        hand.Display.Types = _ => count++ == k ? "q" : BenchDisplay.Honest;
        var report = await hand.Enter();
        if (k < int.MaxValue)
        {
            report.Ending.ShouldBeOfType<EntryEnding.Interrupted>();
        }

        return hand;
    }

    private static async Task<(int Moments, BenchHand Hand)> Cut(int k)
    {
        var hand = new BenchHand();
        var count = 0;
        void Moment()
        {
            if (count++ == k)
            {
                throw new CutOffException();
            }
        }

        (hand.Display.Cut, hand.Records.Cut) = (Moment, Moment);
        await Until(hand);
        return (count, hand);
    }

    private static async Task<EntryReport?> Runs(BenchHand hand, int moments)
    {
        var left = moments;
        void Moment()
        {
            if (left-- == 0)
            {
                throw new CutOffException();
            }
        }

        (hand.Display.Cut, hand.Records.Cut) = (Moment, Moment);
        return await Until(hand);
    }

    private static async Task<EntryReport?> Until(BenchHand hand)
    {
        try
        {
            return await hand.Enter();
        }
        catch (CutOffException)
        {
            return null;
        }
    }
}
