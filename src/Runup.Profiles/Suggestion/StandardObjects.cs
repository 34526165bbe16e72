namespace Runup.Profiles;

/// <summary>What the open standards say of objects that a table or an electronic data sheet only names.</summary>
public static class StandardObjects
{
    /// <summary>The rows with unit and access of the standard where they say none themselves.</summary>
    public static IReadOnlyList<ListedParameter> Complete(IReadOnlyList<ListedParameter> rows, TradeVocabulary vocabulary)
    {
        var known = vocabulary.Objects.ToDictionary(o => o.Number, StringComparer.OrdinalIgnoreCase);
        return
        [
            .. rows.Select(row => known.GetValueOrDefault(row.Number) is { } standard
                ? row with
                {
                    Unit = row.Unit.Length > 0 ? row.Unit : standard.Unit,
                    Name = row.Name.Length > 0 ? row.Name : standard.Name,
                    Access = standard.Access ?? row.Access,
                }
                : row),
        ];
    }
}
