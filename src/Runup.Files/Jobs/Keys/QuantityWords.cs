using System.Text.Json.Nodes;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Keys;

/// <summary>What reading a quantity needs whatever its type: compiled once, not once for each type.</summary>
internal static class QuantityWords
{
    internal static string Wanted(Dimension dimension) => dimension == Dimension.PureNumber
        ? "a number without a unit"
        : $"a number with its unit ({string.Join(", ", dimension.Units.Take(4).Select(u => u.Symbol))})";

    internal static bool Read(YamlScalar scalar, Dimension dimension, Bound bound, Desk desk, out double si, out double roundingSi)
    {
        (si, roundingSi) = (0, 0);
        switch (QuantityText.ReadSi(dimension, scalar.Text))
        {
            case Reading<double>.Problem p:
                desk.Problems.Add(scalar, p.Found, p.WouldDo);
                return false;
            case Reading<double>.Value v when !Magnitude.Is(v.Quantity):
                desk.Problems.Add(scalar, Quote.Of(scalar.Text), Magnitude.WouldDo);
                return false;
            case Reading<double>.Value v when IsWithin(v.Quantity, bound):
                desk.Notice(scalar, v.Notation);
                (si, roundingSi) = (v.Quantity, v.RoundingSi);
                return true;
            default:
                desk.Problems.Add(scalar, Quote.Of(scalar.Text), Limits(dimension, bound));
                return false;
        }
    }

    internal static void TellBelow(YamlScalar scalar, Dimension dimension, Desk desk) => desk.Problems.Add(
        scalar,
        $"{Quote.Of(scalar.Text)} can't be",
        $"{dimension.Name} from {(dimension == Dimension.Temperature ? "absolute zero" : "zero")} up would do");

    /// <summary>A reference to the dimension's definition, which <see cref="JobSchema"/> writes once.</summary>
    internal static JsonObject Schema(Dimension dimension) => new() { ["$ref"] = "#/$defs/" + DefinitionName(dimension) };

    /// <summary>What the dimension is called among the schema's definitions.</summary>
    internal static string DefinitionName(Dimension dimension) => dimension.Name.Replace(' ', '-');

    private static bool IsWithin(double si, Bound bound) => bound switch
    {
        Bound.AboveZero => si > 0,
        Bound.FromZero => si >= 0,
        Bound.UpToWhole => si is >= 0 and <= 1,
        Bound.PartOfWhole => si is > 0 and <= 1,
        _ => true,
    };

    private static string Limits(Dimension dimension, Bound bound) => (bound, dimension == Dimension.Fraction) switch
    {
        (Bound.FromZero, _) => "a value from zero up would do",
        (Bound.UpToWhole, true) => "from 0 % to 100 % would do",
        (Bound.UpToWhole, false) => "from 0 to 1 would do",
        (Bound.PartOfWhole, true) => "more than 0 % and at most 100 % would do",
        (Bound.PartOfWhole, false) => "more than 0 and at most 1 would do",
        _ => "a value above zero would do",
    };
}
