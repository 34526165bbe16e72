using System.Globalization;
using Runup.Engineering.Numerics;

namespace Runup.Engineering.Motors;

/// <summary>A circuit with deep bars (two cages) that follows what one cage cannot: printed figures of breakdown and of the locked rotor together.</summary>
/// <remarks>
/// Unknown are the leakage, the rise of the rotor's resistance at standstill and the corner of the bars (<see cref="DeepBars"/>), by least squares of the
/// logarithms from several starts. Where there are fewer figures than unknowns, weak beliefs hold the rest: leakage as one cage has it, a rise of 0.022/s, a corner
/// of 1.2. Every candidate has the rated point exactly.
/// </remarks>
internal sealed record BarFit(EquivalentCircuit Circuit, IReadOnlyList<Assumption> Assumptions, IReadOnlyList<GivenUp> GaveUp)
{
    private const double FollowedWithin = 0.02;
    private const double Belief = 0.003;
    private const double Highest = 8;
    private static readonly (double Rise, double Corner)[] Starts = [(1, 1.2), (0.3, 0.8), (3, 1.5), (1, 2.5)];

    /// <summary>The fit that follows most of the figures, the first of them before the later; null where one cage does it, or nothing does.</summary>
    internal static BarFit? For(IReadOnlyList<StartingDatum> data, CircuitFamily family, double stator_ohm, double slip)
    {
        if (data.All(datum => datum.Error(family.Member(stator_ohm)) < FollowedWithin))
        {
            return null;
        }

        foreach (var followed in Subsets(data))
        {
            var circuit = Best(followed, family, stator_ohm, slip);
            if (circuit is not null && followed.All(datum => datum.Error(circuit) < FollowedWithin))
            {
                return new BarFit(circuit, Assumed(data, circuit), [.. data.Except(followed).Where(datum => datum.Error(circuit) > FollowedWithin).Select(datum => new GivenUp(
                    datum.Kind, datum.Printed, datum.Of(circuit), "no rotor with this rated point, deep bars included, has it beside the rest; leakage that saturates is not in the circuit"))]);
            }
        }

        return null;
    }

    // All of them, then without one beginning with the last; one alone needs no second cage.
    private static IEnumerable<IReadOnlyList<StartingDatum>> Subsets(IReadOnlyList<StartingDatum> data)
    {
        yield return data;
        for (var without = data.Count - 1; without >= 0 && data.Count > 2; without--)
        {
            yield return [.. data.Where((_, place) => place != without)];
        }
    }

    private static EquivalentCircuit? Best(IReadOnlyList<StartingDatum> followed, CircuitFamily family, double stator_ohm, double slip)
    {
        var believed = Math.Clamp(0.022 / slip, 0.1, Highest);
        double[] Residuals(double[] unknowns)
        {
            var circuit = With(unknowns, family, stator_ohm, slip);
            double[] beliefs = [Belief * unknowns[0], Belief * (unknowns[1] - Math.Log(believed)), Belief * (unknowns[2] - Math.Log(1.2))];
            return [.. followed.Select(datum => Math.Log(datum.Of(circuit) / datum.Printed)), .. beliefs];
        }

        var best = Starts
            .Select(start => LeastSquares.From([0, Math.Log(start.Rise * believed), Math.Log(start.Corner)], Residuals))
            .MinBy(found => found.Sum);
        return double.IsFinite(best.Sum) ? With(best.Unknowns, family, stator_ohm, slip) : null;
    }

    private static EquivalentCircuit With(double[] unknowns, CircuitFamily family, double stator_ohm, double slip)
    {
        static double Bounded(double logarithm, double low, double high) => Math.Exp(Math.Clamp(logarithm, Math.Log(low), Math.Log(high)));
        return family.WithBars(stator_ohm * Bounded(unknowns[0], 0.1, 10), slip, Bounded(unknowns[1], 1e-3, Highest), Bounded(unknowns[2], 0.2, 5));
    }

    private static IReadOnlyList<Assumption> Assumed(IReadOnlyList<StartingDatum> data, EquivalentCircuit circuit) =>
    [
        .. data.Where(datum => datum.Assumption is not null).Select(datum => datum.Assumption!),
        new Assumption(
            "rotor as two cages side by side, by the printed figures of starting and breakdown; the second cage's leakage",
            string.Create(CultureInfo.InvariantCulture, $"{circuit.SecondCage?.Leakage.Ohms ?? 0:G3} Ω"),
            Assumption.CommonPractice,
            false),
    ];
}
