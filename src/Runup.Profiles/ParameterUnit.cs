namespace Runup.Profiles;

/// <summary>The unit that a parameter's display stands in.</summary>
public abstract record ParameterUnit
{
    private ParameterUnit()
    {
    }

    /// <summary>Always the same unit; empty for a pure number.</summary>
    /// <param name="Symbol">The unit as the drive prints it.</param>
    public sealed record Fixed(string Symbol) : ParameterUnit;

    /// <summary>The unit depends on the value of another parameter.</summary>
    /// <param name="Parameter">Number of the parameter that chooses.</param>
    /// <param name="Units">The unit for each of its values.</param>
    public sealed record ChosenBy(string Parameter, IReadOnlyList<ChosenUnit> Units) : ParameterUnit;
}

/// <summary>A unit that holds while the choosing parameter has this value.</summary>
/// <param name="When">Value of the choosing parameter.</param>
/// <param name="Symbol">The unit as the drive prints it.</param>
/// <param name="Scale">Display value of one count in this unit.</param>
public sealed record ChosenUnit(long When, string Symbol, DisplayScale Scale);
