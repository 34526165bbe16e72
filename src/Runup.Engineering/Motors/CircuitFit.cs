namespace Runup.Engineering.Motors;

/// <summary>The equivalent circuit that fits a plate best, or why there is none.</summary>
/// <remarks>
/// <para>
/// Output, voltage, current, speed and (of a consistent plate) power factor are reproduced to the last digits; efficiency follows from them. Losses that the
/// slip does not explain are shared by assumption, leakage is split by design letter (IEEE 112), and its amount is set by the breakdown torque, else by the
/// locked-rotor current or code letter, else by a typical value; figures that one cage cannot follow together ask for a second. What was assumed and what had to
/// give way is part of the answer.
/// </para>
/// <para>
/// Validity: three-phase induction motor, at its rated point on a sine-wave supply; deep bars as a second cage, leakage that does not saturate.
/// </para>
/// </remarks>
[Source("iec-60034-1", "rating plate and rated values")]
[Source("iec-60034-2-1", "assigned allowance for additional load losses")]
[Source("ieee-112", "ratio of stator to rotor leakage reactance by design letter")]
public abstract record CircuitFit
{
    private CircuitFit()
    {
    }

    /// <summary>A circuit was found.</summary>
    public sealed record Fitted : CircuitFit
    {
        /// <summary>The circuit.</summary>
        public required EquivalentCircuit Circuit { get; init; }

        /// <summary>Its steady state at the plate's voltage, frequency and speed.</summary>
        public required CircuitSolution Rated { get; init; }

        /// <summary>Whether the plate's values agreed with one another.</summary>
        public required PlateBalance Balance { get; init; }

        /// <summary>What was taken for granted.</summary>
        public required IReadOnlyList<Assumption> Assumptions { get; init; }

        /// <summary>Each printed value beside the circuit's.</summary>
        public required IReadOnlyList<FitResidual> Residuals { get; init; }

        /// <summary>Printed values that could not be kept.</summary>
        public required IReadOnlyList<GivenUp> GaveUp { get; init; }
    }

    /// <summary>No induction motor has this plate.</summary>
    /// <param name="Obstacles">What stands in the way, at least one.</param>
    public sealed record NotPossible(IReadOnlyList<FitObstacle> Obstacles) : CircuitFit;

    /// <summary>Fits a circuit to a plate; an answer for every plate, however absurd.</summary>
    public static CircuitFit Of(Nameplate plate)
    {
        var obstacles = PlateObstacles.Of(plate).ToList();
        if (obstacles.Count > 0)
        {
            return new NotPossible(obstacles);
        }

        var (split, splitAssumption) = LeakageSplit.For(plate.DesignLetter);
        foreach (var reading in PlateReading.Candidates(plate))
        {
            if (CircuitFamily.Of(reading.Point, split) is { } family)
            {
                return Fit(plate, reading, family, splitAssumption);
            }
        }

        return new NotPossible([new FitObstacle(
            PlateDatum.Current,
            "no induction motor gives this output at this speed from this voltage and current, whatever its efficiency and power factor")]);
    }

    private static Fitted Fit(Nameplate plate, PlateReading reading, CircuitFamily family, Assumption splitAssumption)
    {
        var starting = StartingDatum.All(plate, reading.Point);
        var leakage = LeakageChoice.For(family, reading.Point, starting);
        var bars = BarFit.For(starting, family, leakage.Stator_ohm, reading.Point.Slip);
        var circuit = bars?.Circuit ?? family.Member(leakage.Stator_ohm);
        var rated = CircuitSolution.At(circuit, plate.Voltage, plate.Frequency, plate.RatedSlip);
        var residuals = FitResidual.All(plate, rated);
        return new Fitted
        {
            Circuit = circuit,
            Rated = rated,
            Balance = PlateBalance.Of(plate),
            Assumptions = [.. reading.Assumptions, .. family.Losses.Assumptions(), splitAssumption, .. bars?.Assumptions ?? leakage.Assumptions],
            Residuals = residuals,
            GaveUp = [.. reading.GaveUp, .. bars?.GaveUp ?? leakage.GaveUp, .. StartingDatum.NotBelieved(residuals)],
        };
    }
}

/// <summary>What makes a plate impossible.</summary>
/// <param name="Datum">The value that stands in the way.</param>
/// <param name="Why">In a sentence.</param>
public sealed record FitObstacle(PlateDatum Datum, string Why);

/// <summary>A printed value that the circuit does not follow.</summary>
/// <param name="Datum">Which.</param>
/// <param name="Printed">As printed.</param>
/// <param name="Used">What the circuit has instead.</param>
/// <param name="Why">In a sentence.</param>
public sealed record GivenUp(PlateDatum Datum, double Printed, double Used, string Why);
