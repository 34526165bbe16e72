using System.Globalization;
using Runup.Cli.Survey;
using Runup.Dynamics;
using Runup.Quantities;

namespace Runup.Cli.Rehearsal;

/// <summary>What a rehearsal took of the motor beyond the plain model.</summary>
/// <param name="Cages">How many cages turn.</param>
/// <param name="IronShare">Share of the magnetizing current that the iron takes at rated voltage without load.</param>
internal sealed record DetailWords(int Cages, Fraction IronShare)
{
    internal static DetailWords Of(LoadedJob job, PlantDetail detail) => new(detail.TwoCages && job.Context.Circuit?.SecondCage is not null ? 2 : 1, detail.IronShare);

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"With {(Cages == 2 ? "two cages" : "one cage")}, and iron that takes {IronShare.Percent:0.#} % of the magnetizing current at rated voltage without load (no plate tells it; 0 to 30 % are usual, common practice, no source).");
}
