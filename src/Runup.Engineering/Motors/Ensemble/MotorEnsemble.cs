namespace Runup.Engineering.Motors.Ensemble;

/// <summary>Motors that all fit a plate, with what each of them weighs: a nameplate does not determine a motor.</summary>
/// <remarks>
/// <para>
/// Each member has the rated point of the plate (within rounding, and the tolerances of IEC 60034-1 where these count), its losses shared at random, a random
/// amount and split of leakage, bars of random depth, and a random share of iron in its magnetizing current. Members whose locked-rotor and breakdown figures
/// are unlike those printed weigh less.
/// </para>
/// <para>Validity: as <see cref="CircuitFit"/>. Assumptions: the distributions, which no standard gives; docs/calculations/motor-ensemble.md lists them.</para>
/// </remarks>
[Source("iec-60034-1", "schedule of tolerances")]
public sealed class MotorEnsemble
{
    /// <summary>How many members there are unless told otherwise.</summary>
    public const int DefaultSize = 512;

    /// <summary>The seed of the members unless told otherwise.</summary>
    public const ulong DefaultSeed = 20;

    // So many times the members are tried for a plate that hardly any motor has.
    private const int Patience = 16;

    private readonly Population population;

    private MotorEnsemble(Population population, Nameplate plate, PlateTrust trust) => (this.population, Plate, Trust) = (population, plate, trust);

    /// <summary>The plate.</summary>
    public Nameplate Plate { get; }

    /// <summary>How far the plate is taken at its word.</summary>
    public PlateTrust Trust { get; }

    /// <summary>How many members of equal weight would tell as much.</summary>
    public double EffectiveSize => population.EffectiveSize;

    /// <summary>Logarithm of the likelihood of all that is known beside the rated point, under what was believed before it; only differences mean something.</summary>
    public double LogEvidence => population.LogEvidence;

    internal ReadOnlySpan<MotorMember> Members => population.Members;

    internal ReadOnlySpan<double> Weights => population.Weights;

    /// <summary>The ensemble of a plate; null where none was found that has it.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="trust">How far it is taken at its word.</param>
    /// <param name="size">How many members.</param>
    /// <param name="seed">Of the random numbers: the same seed gives the same members.</param>
    public static MotorEnsemble? Of(Nameplate plate, PlateTrust trust = PlateTrust.WithTolerances, int size = DefaultSize, ulong seed = DefaultSeed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(size, 1);
        if (PlateObstacles.Of(plate).Any())
        {
            return null;
        }

        foreach (var reading in PlateReading.Candidates(plate))
        {
            var builder = new MemberBuilder(new PlateBeliefs(plate, reading, trust), MotorPrior.For(plate, reading.Point, trust));
            if ((Population.Draw(builder, seed, size) ?? Population.Draw(builder, seed, Patience * size)) is { } drawn)
            {
                var all = drawn.After(PlateEvidence.Of(plate, trust), seed + 1);
                all.Balance(reading.Point);
                return new MotorEnsemble(all, plate, trust);
            }
        }

        return null;
    }

    /// <summary>The ensemble after readings; this one stays what it is.</summary>
    public MotorEnsemble After(IReadOnlyList<InstrumentReading> readings) =>
        new(population.After([.. readings.Select(reading => reading.Evidence(Trust))], DefaultSeed + 2), Plate, Trust);

    /// <summary>So many of the motors, each standing for the same share of the weight; their iron is taken as straight.</summary>
    public IReadOnlyList<EquivalentCircuit> Sample(int count) =>
        [.. Systematic(count).Select(index => population.Members[index].Values.Circuit(population.Members[index].Phase_V, population.Members[index].Current_A))];

    /// <summary>A drive's voltage in proportion to frequency up to the plate's, without boost.</summary>
    public Drives.VoltsPerHertz StraightLine => new() { BaseFrequency = Plate.Frequency, MaximumVoltage = Plate.Voltage, RatedVoltage = Plate.Voltage };

    /// <summary>The band of a figure over the members; null where no member has it.</summary>
    internal Band<double>? Band(MemberFigure figure) => Ensemble.Band.Of(Figures(figure), Weights);

    /// <summary>A figure of each member; not a number for one that weighs nothing.</summary>
    internal double[] Figures(MemberFigure figure)
    {
        var values = new double[Members.Length];
        for (var index = 0; index < values.Length; index++)
        {
            values[index] = Weights[index] > 0 ? figure(Members[index]) : double.NaN;
        }

        return values;
    }

    /// <summary>So many members, spread evenly over the weight.</summary>
    internal IEnumerable<int> Systematic(int count)
    {
        var (sum, index) = (0.0, -1);
        for (var part = 0; part < count; part++)
        {
            while (sum <= (part + 0.5) / count && index < Members.Length - 1)
            {
                sum += Weights[++index];
            }

            yield return index;
        }
    }
}
