using Runup.Commissioning.Entry;
using Runup.Commissioning.Entry.ByHand;
using Runup.Profiles;

namespace Runup.Commissioning.Tests.Bench;

/// <summary>A person at the bench drive's own display, who sets what is asked and types what it shows, unless a script says otherwise.</summary>
internal sealed class BenchDisplay(BenchDrive drive, BenchPerson person) : IPersonAtDisplay
{
    internal List<DisplayQuestion> Asked { get; } = [];

    internal List<string> Told { get; } = [];

    /// <summary>What is typed instead; the empty text by default, where the display shows what was expected.</summary>
    internal Func<DisplayQuestion, string?> Types { get; set; } = _ => Honest;

    /// <summary>In a script: what an honest person does.</summary>
    internal static string Honest => "honest";

    internal Action? Cut { get; set; }

    public string Name => "A. Person";

    public Task<PersonSays> Confirm(ToConfirm thing, CancellationToken cancellation)
    {
        Cut?.Invoke();
        if (thing.What == "told-to-keep")
        {
            drive.Store();
        }

        return person.Confirm(thing, cancellation);
    }

    public Task<PersonSays> PowerCycle(CancellationToken cancellation)
    {
        Cut?.Invoke();
        drive.PowerCycle();
        return person.PowerCycle(cancellation);
    }

    public void Tell(string words) => Told.Add(words);

    public Task<string?> Look(DisplayQuestion question, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        Cut?.Invoke();
        Asked.Add(question);
        var typed = Types(question);
        if (typed != Honest)
        {
            return Task.FromResult(typed);
        }

        var number = question.Parameter.Number;
        if (question.For == LookFor.Entered && !drive.RefusesToWrite.Contains(number) && drive.Held[number] != question.Expected.Raw)
        {
            drive.Write(number, question.Expected.Raw);
        }

        Cut?.Invoke();
        var shows = DisplayText.Of(question.Parameter, drive.Held[number]!.Value, drive.Held);
        return Task.FromResult<string?>(shows == question.Expected.Display ? "" : shows);
    }
}
