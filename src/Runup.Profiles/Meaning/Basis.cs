using Runup.Quantities;

namespace Runup.Profiles;

/// <summary>What a part is a part of, or what a ramp counts to.</summary>
public abstract record Basis
{
    private Basis()
    {
    }

    /// <summary>The parameters that it reads.</summary>
    public virtual IReadOnlyList<string> Reads => [];

    /// <summary>What another parameter says.</summary>
    /// <param name="Parameter">Its number.</param>
    public sealed record Of(string Parameter) : Basis
    {
        /// <inheritdoc/>
        public override IReadOnlyList<string> Reads => [Parameter];

        /// <inheritdoc/>
        public override string ToString() => $"parameter {Parameter}";
    }

    /// <summary>The same on every drive.</summary>
    /// <param name="Si">How much, in SI.</param>
    /// <param name="Dimension">Of what.</param>
    /// <param name="Text">As the profile states it, such as <c>50 Hz</c>.</param>
    public sealed record Always(double Si, Dimension Dimension, string Text) : Basis
    {
        /// <inheritdoc/>
        public override string ToString() => Text;
    }

    /// <summary>The continuous current of the drive's size in an overload cycle.</summary>
    /// <param name="Cycle">Name of the cycle, such as <c>normal</c>.</param>
    public sealed record SizeCurrent(string Cycle) : Basis
    {
        /// <inheritdoc/>
        public override string ToString() => $"the drive's own {Cycle} current";
    }
}
