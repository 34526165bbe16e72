using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Profiles;

/// <summary>Reads quantities of a rating, which none of them can be without.</summary>
internal static class PositiveQuantity
{
    /// <summary>A quantity of more than zero.</summary>
    internal static T? Positive<T>(this MapReader map, string key, string? needed = null)
        where T : struct, IQuantity<T>
    {
        var quantity = map.Quantity<T>(key, needed);
        if (quantity is { Si: <= 0 })
        {
            map.Fault(key, "not more than zero", needed ?? "more than zero would do, or leave the key out");
            return null;
        }

        return quantity;
    }
}
