namespace Runup.Profiles;

/// <summary>How well the value that is entered says what the plan wants.</summary>
public abstract record Fit
{
    private Fit()
    {
    }

    /// <summary>Whether two numbers are the same but for the noise of arithmetic.</summary>
    internal static bool Same(double a, double b) => Math.Abs(a - b) <= 1e-9 * Math.Max(1e-6, Math.Max(Math.Abs(a), Math.Abs(b)));

    /// <summary>Exactly.</summary>
    public sealed record Exact : Fit
    {
        /// <summary>The one instance that is needed.</summary>
        public static Exact Instance { get; } = new();
    }

    /// <summary>Rounded to the drive's resolution.</summary>
    /// <param name="WantedSi">What the plan wants, in SI.</param>
    /// <param name="GivenSi">What the entered value says, in SI.</param>
    public sealed record Rounded(double WantedSi, double GivenSi) : Fit;

    /// <summary>The plan's value lies outside the drive's range; the nearest that it takes stands in its place and a person must know.</summary>
    /// <param name="WantedSi">What the plan wants, in SI.</param>
    /// <param name="GivenSi">What the nearest value says, in SI.</param>
    public sealed record OutOfRange(double WantedSi, double GivenSi) : Fit;
}
