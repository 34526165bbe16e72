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

    internal override bool Read(YamlScalar scalar, Desk desk, out T value, out double roundingSi)
    {
        value = default;
        if (!QuantityWords.Read(scalar, T.Dimension, bound, desk, out var si, out roundingSi))
        {
            return false;
        }

        try
        {
            value = T.FromSi(si);
            return true;
        }
        catch (ArgumentOutOfRangeException)
        {
            QuantityWords.TellBelow(scalar, T.Dimension, desk);
            return false;
        }
    }

    internal override string Definition => QuantityWords.DefinitionName(T.Dimension);

    internal override JsonObject Schema() => QuantityWords.Schema(T.Dimension);
}
