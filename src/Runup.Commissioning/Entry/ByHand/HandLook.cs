using Runup.Profiles;

namespace Runup.Commissioning.Entry.ByHand;

/// <summary>Asks a person about single parameters, each until the answer is clear.</summary>
internal sealed class HandLook(DriveProfile profile, DriveSize size, IPersonAtDisplay person, IReadOnlyDictionary<string, string> why)
{
    private readonly ParameterValues factory = ParameterValues.Defaults(profile, size);

    /// <summary>The person.</summary>
    public IPersonAtDisplay Person => person;

    /// <summary>Asks once; twice where the meaning of others hangs on it, or where the drive seems to have forgotten it; until both answers are the same.</summary>
    /// <param name="parameter">The parameter.</param>
    /// <param name="looking">For what, and the place among others.</param>
    /// <param name="now">What it held when last seen, in counts, or null.</param>
    /// <param name="expected">What an empty answer stands for, in counts.</param>
    /// <param name="known">What is known of the drive.</param>
    /// <param name="trouble">What was wrong with the answer before, or null.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<HandAnswer> Ask(
        Parameter parameter, (LookFor For, int Place, int Of) looking, long? now, long expected, ParameterValues known, string? trouble, CancellationToken cancellation)
    {
        var values = factory.With(known);
        var question = new DisplayQuestion
        {
            Parameter = parameter,
            For = looking.For,
            Place = looking.Place,
            Of = looking.Of,
            Now = now is { } raw ? DisplayText.Shown(parameter, raw, values) : null,
            Factory = DisplayText.Shown(parameter, profile.Default(parameter, size, values), factory),
            Expected = DisplayText.Shown(parameter, expected, values),
            Why = why.GetValueOrDefault(parameter.Number),
            Trouble = trouble,
        };
        var first = await UntilClear(question, values, cancellation);
        if (first is not HandAnswer.Shows shows || !(EntryOrder.ChoosesUnits(profile, parameter) || (looking.For == LookFor.Kept && shows.Raw != expected)))
        {
            return first;
        }

        var second = await UntilClear(question with { SecondLook = true, Trouble = null, Expected = DisplayText.Shown(parameter, shows.Raw, values) }, values, cancellation);
        return second is HandAnswer.Shows again && again.Raw != shows.Raw
            ? await Ask(parameter, looking, now, expected, known, $"First {DisplayText.Shown(parameter, shows.Raw, values).Text}, then {DisplayText.Shown(parameter, again.Raw, values).Text}: look once more.", cancellation)
            : second;
    }

    private async Task<HandAnswer> UntilClear(DisplayQuestion question, ParameterValues values, CancellationToken cancellation)
    {
        while (true)
        {
            cancellation.ThrowIfCancellationRequested();
            switch (HandAnswer.Read(await person.Look(question, cancellation), question, size, values))
            {
                case HandAnswer.Unclear unclear:
                    question = question with { Trouble = unclear.Why };
                    break;
                case var clear:
                    return clear;
            }
        }
    }
}
