namespace Runup.Settings;

/// <summary>What values a setting takes: a number in a unit, or one of named choices.</summary>
public abstract record SettingForm
{
    private SettingForm()
    {
    }

    /// <summary>A number; SI inside, this unit in JSON and for people.</summary>
    /// <param name="Unit">Unit of the vocabulary, such as Hz, rpm or %; "1" for a count or a pure number.</param>
    /// <param name="SiPerUnit">SI value of one of the unit.</param>
    public sealed record Numeric(string Unit, double SiPerUnit) : SettingForm;

    /// <summary>One of these names.</summary>
    /// <param name="Choices">The names, in the vocabulary's order.</param>
    public sealed record OneOf(IReadOnlyList<string> Choices) : SettingForm;
}
