namespace Runup.Commissioning.Checks;

/// <summary>The answer of one check: don't-know never becomes yes or no.</summary>
public abstract record CheckResult
{
    private CheckResult(string id) => Id = id;

    /// <summary>The check, such as <c>plate.power-unit</c>.</summary>
    public string Id { get; }

    /// <summary>Nothing to object to.</summary>
    public sealed record Satisfied : CheckResult
    {
        /// <summary>Nothing to object to, and why.</summary>
        /// <param name="id">The check.</param>
        /// <param name="because">The figures that satisfied it.</param>
        public Satisfied(string id, string because)
            : base(id) => Because = because;

        /// <summary>The figures that satisfied it.</summary>
        public string Because { get; }
    }

    /// <summary>Something does not fit.</summary>
    public sealed record Violated : CheckResult
    {
        /// <summary>A finding of a check.</summary>
        /// <param name="id">The check.</param>
        /// <param name="severity">How much it weighs.</param>
        /// <param name="blocks">The first stage that it holds up if it is a blocker.</param>
        /// <param name="basis">What the limit rests on.</param>
        /// <exception cref="ArgumentException">A blocker on a basis that may not hold up a stage.</exception>
        public Violated(string id, Severity severity, Stage blocks, Basis basis)
            : base(id)
        {
            if (severity == Severity.Blocker && !basis.MayBlock)
            {
                throw new ArgumentException($"{id}: '{basis.Text}' may caution, not block.", nameof(severity));
            }

            (Severity, Blocks, Basis) = (severity, blocks, basis);
        }

        /// <summary>How much it weighs.</summary>
        public Severity Severity { get; }

        /// <summary>The first stage that it holds up if it is a blocker.</summary>
        public Stage Blocks { get; }

        /// <summary>What the limit rests on.</summary>
        public Basis Basis { get; }

        /// <summary>What is wrong, in a few words.</summary>
        public required string Title { get; init; }

        /// <summary>One sentence that a technician would say.</summary>
        public required string Explanation { get; init; }

        /// <summary>What to do.</summary>
        public required string Remedy { get; init; }

        /// <summary>The value found, in <see cref="Unit"/>; null where there is no number.</summary>
        public double? Value { get; init; }

        /// <summary>The limit, in <see cref="Unit"/>; null where there is no number.</summary>
        public double? Limit { get; init; }

        /// <summary>Unit of value and limit; "1" for a pure number, null where there is no number.</summary>
        public string? Unit { get; init; }
    }

    /// <summary>Cannot be said with what is known.</summary>
    public sealed record Undecided : CheckResult
    {
        /// <summary>Cannot be said.</summary>
        /// <param name="id">The check.</param>
        /// <param name="missing">What is missing, and where it is to be found.</param>
        /// <param name="wouldChange">What it would decide.</param>
        public Undecided(string id, string missing, string wouldChange)
            : base(id) => (Missing, WouldChange) = (missing, wouldChange);

        /// <summary>What is missing, and where it is to be found.</summary>
        public string Missing { get; }

        /// <summary>What it would decide.</summary>
        public string WouldChange { get; }
    }
}
