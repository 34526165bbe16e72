using System.Text.Json.Nodes;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Keys;

/// <summary>A number with its unit, or a pure number.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="bound">What it can be at all.</param>
internal sealed class QuantityForm<T>(Bound bound) : Form<T>
    where T : struct, IQuantity<T>
{
    internal override string Wanted => QuantityWords.Wanted(T.Dimension);

    internal override FormReading<T>? Read(YamlScalar scalar, Desk desk)
    {
        if (QuantityWords.Read(scalar, T.Dimension, bound, desk) is not { } read)
        {
            return null;
        }

        try
        {
            return new FormReading<T>(T.FromSi(read.Quantity), read.RoundingSi);
        }
        catch (ArgumentOutOfRangeException)
        {
            desk.Problems.Add(scalar, $"{Quote.Of(scalar.Text)} can't be", $"{T.Dimension.Name} from {(T.Dimension == Dimension.Temperature ? "absolute zero" : "zero")} up would do");
            return null;
        }
    }

    internal override string Definition => QuantityWords.DefinitionName(T.Dimension);

    internal override JsonObject Schema() => QuantityWords.Schema(T.Dimension);
}
