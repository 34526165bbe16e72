namespace Runup.Profiles;

/// <summary>A limit or a factory value that depends on what another parameter holds.</summary>
public abstract record Dependent
{
    private Dependent(string parameter) => Parameter = parameter;

    /// <summary>Number of the parameter that it depends on.</summary>
    public string Parameter { get; }

    /// <summary>So many times what the other parameter says, in whatever units the two stand.</summary>
    public sealed record Times : Dependent
    {
        /// <summary>Makes one.</summary>
        /// <param name="parameter">Number of the other parameter.</param>
        /// <param name="factor">How many times; more than zero.</param>
        public Times(string parameter, decimal factor)
            : base(parameter) => Factor = factor;

        /// <summary>How many times.</summary>
        public decimal Factor { get; }
    }

    /// <summary>A value of its own for each choice of the other parameter.</summary>
    public sealed record ByChoice : Dependent
    {
        /// <summary>Makes one.</summary>
        /// <param name="parameter">Number of the other parameter.</param>
        /// <param name="values">In counts, by the value of the other parameter.</param>
        public ByChoice(string parameter, IReadOnlyDictionary<long, long> values)
            : base(parameter) => Values = values;

        /// <summary>In counts, by the value of the other parameter.</summary>
        public IReadOnlyDictionary<long, long> Values { get; }
    }
}
