namespace Runup.Commissioning.FirstRun;

/// <summary>How a step ended; a closed set.</summary>
internal abstract record StepEnding
{
    private StepEnding()
    {
    }

    /// <summary>The outcome's name in the record.</summary>
    public string Outcome => this switch
    {
        Passed => "passed",
        Failed => "failed",
        Stopped => "stopped",
        LeftOut => "skipped",
        Ends => "failed",
        _ => throw new InvalidOperationException("The set of endings is closed."),
    };

    /// <summary>What a person should know, or null.</summary>
    public abstract string? Remark { get; }

    /// <summary>The end of the first run, since a rule of safety forbids to go on.</summary>
    public static Ends Refused(string why) => new(new FirstRunEnding.RefusedForSafety(why), why);

    /// <summary>All was as expected.</summary>
    /// <param name="NotRead">What was not read, in words, or null.</param>
    public sealed record Passed(string? NotRead = null) : StepEnding
    {
        /// <inheritdoc/>
        public override string? Remark => NotRead;
    }

    /// <summary>The person leaves it out, or nothing in it could be judged.</summary>
    public sealed record LeftOut(string Why) : StepEnding
    {
        /// <inheritdoc/>
        public override string Remark => Why;
    }

    /// <summary>Something was not as expected; a person decides whether to go on.</summary>
    public sealed record Failed(string Why) : StepEnding
    {
        /// <inheritdoc/>
        public override string Remark => Why;
    }

    /// <summary>The person let go; it may be done again.</summary>
    public sealed record Stopped(string Why) : StepEnding
    {
        /// <inheritdoc/>
        public override string Remark => Why;
    }

    /// <summary>The first run is over.</summary>
    public sealed record Ends(FirstRunEnding Ending, string Why) : StepEnding
    {
        /// <inheritdoc/>
        public override string Remark => Why;
    }
}
