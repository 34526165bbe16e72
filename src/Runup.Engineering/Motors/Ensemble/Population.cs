using Runup.Engineering.Numerics;

namespace Runup.Engineering.Motors.Ensemble;

/// <summary>Members with their weights, and how they change with what becomes known.</summary>
/// <remarks>
/// Sequential Monte Carlo (Del Moral, Doucet and Jasra, 2006): new evidence is let in by degrees, each as large as leaves half of the effective sample size;
/// below that size members are resampled in proportion to their weights and moved by steps made of the difference of two others (ter Braak, 2006), each
/// accepted or refused by Metropolis' rule, so that copies part again. Effective sample size: (Σw)²/Σw².
/// </remarks>
internal sealed class Population
{
    private const double ResampleBelow = 0.5;
    private const double SmallestDegree = 1e-4;
    private const int MovesEachTime = 3;
    private const double StepLength = 0.5;

    private const int BalanceRounds = 4;
    private const double LeastToBalance = 0.01;

    private readonly MemberBuilder builder;
    private readonly RandomStream random;
    private readonly List<IEvidence> evidence;
    private readonly double[] places;
    private readonly MotorMember[] members;
    private readonly double[] logPriors;
    private readonly double[] logLikelihoods;
    private readonly double[] weights;

    private Population(MemberBuilder builder, ulong seed, int count)
    {
        (this.builder, random, evidence) = (builder, new RandomStream(seed), []);
        places = random.LatinHypercube(count, Place.Count);
        members = new MotorMember[count];
        (logPriors, logLikelihoods, weights) = (new double[count], new double[count], new double[count]);
    }

    private Population(Population other, ulong seed)
    {
        (builder, random, evidence) = (other.builder, new RandomStream(seed), [.. other.evidence]);
        (places, members) = ([.. other.places], [.. other.members]);
        (logPriors, logLikelihoods, weights) = ([.. other.logPriors], [.. other.logLikelihoods], [.. other.weights]);
        LogEvidence = other.LogEvidence;
    }

    internal ReadOnlySpan<MotorMember> Members => members;

    /// <summary>Weights that add up to one.</summary>
    internal ReadOnlySpan<double> Weights => weights;

    /// <summary>Logarithm of the probability density of all evidence so far under what was believed before it.</summary>
    internal double LogEvidence { get; private set; }

    internal double EffectiveSize => EffectiveSizeOf(weights);

    /// <summary>The first population; null where no member can be built.</summary>
    internal static Population? Draw(MemberBuilder builder, ulong seed, int count)
    {
        var drawn = new Population(builder, seed, count);
        var any = false;
        for (var index = 0; index < count; index++)
        {
            var built = builder.TryBuild(drawn.PlacesOf(index), out drawn.members[index], out drawn.logPriors[index]);
            drawn.weights[index] = built ? 1 : 0;
            any |= built;
        }

        if (!any)
        {
            return null;
        }

        // What is believed of a member's like is let in first; it is no evidence.
        drawn.LetIn((in MotorMember _, double prior) => prior, isEvidence: false);
        return drawn;
    }

    /// <summary>The population after more is known; this one stays what it is.</summary>
    internal Population After(IReadOnlyList<IEvidence> more, ulong seed)
    {
        var after = new Population(this, seed);
        if (more.Count > 0)
        {
            after.LetIn((in MotorMember member, double _) => Sum(more, member), isEvidence: true);
            after.evidence.AddRange(more);
            for (var index = 0; index < after.members.Length; index++)
            {
                after.logLikelihoods[index] = after.weights[index] > 0 ? Sum(after.evidence, after.members[index]) : double.NegativeInfinity;
            }
        }

        return after;
    }

    /// <summary>
    /// Brings half of the weight to either side of the rated current and of the rated slip: the plate's figures are the middle of what the motor may have,
    /// which beliefs about its inside would otherwise shift a little.
    /// </summary>
    internal void Balance(in RatedPoint plate)
    {
        for (var round = 0; round < BalanceRounds; round++)
        {
            var (current, slip) = (plate.Current_A, plate.Slip);
            Halve((in MotorMember member) => member.Current_A / current);
            Halve((in MotorMember member) => member.Slip / slip);
        }
    }

    private void Halve(MemberFigure relative)
    {
        var (below, at) = (0.0, 0.0);
        for (var index = 0; index < members.Length; index++)
        {
            if (weights[index] > 0 && Math.Abs(relative(members[index]) - 1) < 1e-12)
            {
                at += weights[index];
            }
            else if (weights[index] > 0 && relative(members[index]) < 1)
            {
                below += weights[index];
            }
        }

        var above = 1 - below - at;
        if (!(below > LeastToBalance) || !(above > LeastToBalance))
        {
            return;
        }

        for (var index = 0; index < members.Length; index++)
        {
            var side = weights[index] > 0 ? relative(members[index]) - 1 : 0;
            weights[index] *= side < -1e-12 ? (1 - at) / (2 * below) : side > 1e-12 ? (1 - at) / (2 * above) : 1;
        }
    }

    private delegate double Gain(in MotorMember member, double logPrior);

    private void LetIn(Gain gain, bool isEvidence)
    {
        var gains = new double[members.Length];
        for (var index = 0; index < gains.Length; index++)
        {
            gains[index] = weights[index] > 0 ? gain(members[index], logPriors[index]) : double.NegativeInfinity;
        }

        var (let, trial) = (0.0, new double[members.Length]);
        while (let < 1)
        {
            var degree = Degree(gains, trial, 1 - let);
            var mean = Weigh(gains, degree, trial);
            trial.CopyTo(weights, 0);
            let += degree;
            if (isEvidence)
            {
                LogEvidence += mean;
            }

            if (EffectiveSize < ResampleBelow * members.Length)
            {
                Resample(gains);
                for (var move = 0; move < MovesEachTime; move++)
                {
                    Move(gain, gains, let, isEvidence);
                }
            }
        }
    }

    /// <summary>The largest degree that leaves half of the effective size.</summary>
    private double Degree(double[] gains, double[] trial, double most)
    {
        var wanted = ResampleBelow * 0.999 * EffectiveSize;
        Weigh(gains, most, trial);
        if (EffectiveSizeOf(trial) >= wanted)
        {
            return most;
        }

        var (low, high) = (0.0, most);
        for (var step = 0; step < 12; step++)
        {
            var middle = (low + high) / 2;
            Weigh(gains, middle, trial);
            (low, high) = EffectiveSizeOf(trial) >= wanted ? (middle, high) : (low, middle);
        }

        return Math.Max(low, Math.Min(SmallestDegree, most));
    }

    /// <summary>Weights after a degree more of the gains; returns the logarithm of their mean.</summary>
    private double Weigh(double[] gains, double degree, double[] into)
    {
        var largest = double.NegativeInfinity;
        for (var index = 0; index < gains.Length; index++)
        {
            largest = weights[index] > 0 ? Math.Max(largest, degree * gains[index]) : largest;
        }

        if (!double.IsFinite(largest))
        {
            weights.CopyTo(into, 0);
            return 0;
        }

        var (sum, before) = (0.0, 0.0);
        for (var index = 0; index < gains.Length; index++)
        {
            into[index] = weights[index] > 0 ? weights[index] * Math.Exp((degree * gains[index]) - largest) : 0;
            sum += into[index];
            before += weights[index];
        }

        for (var index = 0; index < into.Length; index++)
        {
            into[index] /= sum;
        }

        return largest + Math.Log(sum / before);
    }

    /// <summary>Systematic resampling: as many copies of a member as its weight asks for.</summary>
    private void Resample(double[] gains)
    {
        var count = members.Length;
        var (start, sum, from) = (random.NextUniform() / count, 0.0, -1);
        var (oldPlaces, oldMembers, oldPriors, oldLikelihoods, oldGains) =
            ((double[])[.. places], (MotorMember[])[.. members], (double[])[.. logPriors], (double[])[.. logLikelihoods], (double[])[.. gains]);
        for (var index = 0; index < count; index++)
        {
            while (sum <= start + ((double)index / count) && from < count - 1)
            {
                sum += weights[++from];
            }

            oldPlaces.AsSpan(from * Place.Count, Place.Count).CopyTo(PlacesOf(index));
            (members[index], logPriors[index], logLikelihoods[index], gains[index]) = (oldMembers[from], oldPriors[from], oldLikelihoods[from], oldGains[from]);
        }

        Array.Fill(weights, 1.0 / count);
    }

    private void Move(Gain gain, double[] gains, double let, bool isEvidence)
    {
        Span<double> trial = stackalloc double[Place.Count];
        for (var index = 0; index < members.Length; index++)
        {
            Propose(index, trial);
            if (!builder.TryBuild(trial, out var member, out var logPrior))
            {
                continue;
            }

            var candidate = gain(member, logPrior);
            var logLikelihood = Sum(evidence, member);
            var better = (let * (candidate - gains[index])) + logLikelihood - logLikelihoods[index] + (isEvidence ? logPrior - logPriors[index] : 0);
            if (Math.Log(random.NextUniform()) < better)
            {
                (members[index], logPriors[index], logLikelihoods[index], gains[index]) = (member, logPrior, logLikelihood, candidate);
                trial.CopyTo(PlacesOf(index));
            }
        }
    }

    private void Propose(int index, Span<double> trial)
    {
        var one = PlacesOf(random.NextBelow(members.Length));
        var other = PlacesOf(random.NextBelow(members.Length));
        var length = StepLength * Math.Sqrt(2 * random.NextUniform());
        var from = PlacesOf(index);
        for (var place = 0; place < trial.Length; place++)
        {
            var moved = from[place] + (length * (one[place] - other[place])) + (0.02 * (random.NextUniform() - 0.5));

            // Folded back at both ends, which keeps the even distribution even.
            moved = Math.Abs(moved) % 2;
            trial[place] = Math.Clamp(moved > 1 ? 2 - moved : moved, 1e-9, 1 - 1e-9);
        }
    }

    private Span<double> PlacesOf(int index) => places.AsSpan(index * Place.Count, Place.Count);

    private static double Sum(IReadOnlyList<IEvidence> evidence, in MotorMember member)
    {
        var sum = 0.0;
        for (var index = 0; index < evidence.Count; index++)
        {
            sum += evidence[index].LogLikelihood(member);
        }

        return double.IsNaN(sum) ? double.NegativeInfinity : sum;
    }

    private static double EffectiveSizeOf(double[] weights)
    {
        var (sum, squares) = (0.0, 0.0);
        foreach (var weight in weights)
        {
            sum += weight;
            squares += weight * weight;
        }

        return squares > 0 ? sum * sum / squares : 0;
    }
}
