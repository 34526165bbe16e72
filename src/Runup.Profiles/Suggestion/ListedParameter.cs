namespace Runup.Profiles;

/// <summary>A row of a manual's table or an EDS file as it was understood, before anybody said what it means. Null is: not printed.</summary>
public sealed record ListedParameter
{
    /// <summary>The make's number or index, such as <c>104</c> or <c>6046h:1</c>.</summary>
    public required string Number { get; init; }

    /// <summary>The name on the make's list.</summary>
    public required string Name { get; init; }

    /// <summary>The heading that it stands under; empty where there is none.</summary>
    public string Group { get; init; } = "";

    /// <summary>Unit as the trade prints it; empty for a pure number.</summary>
    public string Unit { get; init; } = "";

    /// <summary>The unit with all that the table prints around it, such as <c>% of FLC</c>; empty where that is not known.</summary>
    public string UnitText { get; init; } = "";

    /// <summary>Display value of one count.</summary>
    public decimal? Scale { get; init; }

    /// <summary>Lowest value as the display shows it.</summary>
    public decimal? Low { get; init; }

    /// <summary>Highest value as the display shows it.</summary>
    public decimal? High { get; init; }

    /// <summary>Factory value as the display shows it; of choices the value in the register.</summary>
    public decimal? Default { get; init; }

    /// <summary>Its choices, or its special values where it has a range; none for a plain number.</summary>
    public IReadOnlyList<NamedValue> Choices { get; init; } = [];

    /// <summary>When it may be written.</summary>
    public ParameterAccess? Access { get; init; }

    /// <summary>PDU address from 0; of 32 bits the lower.</summary>
    public int? Register { get; init; }

    /// <summary>Bits, 16 or 32.</summary>
    public int? Width { get; init; }

    /// <summary>Whether the register holds two's complement.</summary>
    public bool? Signed { get; init; }

    /// <summary>What else the table says about it: a description or remark; empty where there is none.</summary>
    public string Remark { get; init; } = "";

    /// <summary>Line of the table on which it begins, counted from 1.</summary>
    public int Line { get; init; } = 1;

    /// <summary>Whether its choices are all that it takes; otherwise it is a number, perhaps with special values.</summary>
    public bool IsChosen => Choices.Count > 0 && (Low is null || High is null);
}
