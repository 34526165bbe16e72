using Microsoft.Extensions.Time.Testing;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Entry.ByHand;

namespace Runup.Commissioning.Tests.Bench;

/// <summary>A drive without a link, a person at its display, and a record.</summary>
internal sealed class BenchHand
{
    internal BenchHand()
    {
        Drive = new(Time);
        Person = new(Time) { CyclesPower = () => Task.FromResult<PersonSays>(new PersonSays.Yes("A. Person")) };
        Display = new(Drive, Person);
    }

    internal FakeTimeProvider Time { get; } = new();

    internal BenchDrive Drive { get; }

    internal BenchPerson Person { get; }

    internal BenchDisplay Display { get; }

    internal BenchRecords Records { get; } = new();

    internal async Task<EntryReport> Enter(EntryTask? task = null, CancellationToken cancellation = default)
    {
        var job = task ?? BenchSite.Job();
        var why = job.Sheet.Lines.ToDictionary(l => l.Number, _ => "as planned");
        return await new EnterByHand(job, ToLookAt.Of(BenchMake.Profile, job.Sheet, all: false), why, Display, Records).Run(cancellation);
    }

    internal Task<DriveRead> Read(bool all = false) => ReadByHand.Run(
        BenchSite.Tag, BenchMake.Profile, BenchMake.Size, ToLookAt.Of(BenchMake.Profile, BenchSite.Sheet(), all), Display, Records, default);

    internal IEnumerable<DisplayQuestion> Questions(LookFor purpose) => Display.Asked.Where(q => q.For == purpose);

    internal void HoldsTheSheet(string why)
    {
        foreach (var line in BenchSite.Sheet().Lines)
        {
            Drive.Held[line.Number].ShouldBe(line.Raw, $"{line.Number}, {why}");
        }
    }

    /// <summary>The same script, asked once: afterwards the person is honest.</summary>
    internal void TypesOnce(LookFor purpose, string number, params string?[] answers)
    {
        var left = new Queue<string?>(answers);
        Display.Types = q => q.For == purpose && q.Parameter.Number == number && left.TryDequeue(out var typed) ? typed : BenchDisplay.Honest;
    }
}
