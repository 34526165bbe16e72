using Runup.Commissioning.Survey;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Keys;

/// <summary>Collects the keys of a group in the order in which they are declared.</summary>
internal sealed class KeyList
{
    private readonly List<Key> all = [];

    /// <summary>The keys so far.</summary>
    internal IReadOnlyList<Key> All => all;

    internal Key<Datum<T>> Quantity<T>(string name, string example, string about, Bound bound, Need? need = null)
        where T : struct, IQuantity<T> => Datum(name, example, about, new QuantityForm<T>(bound), need);

    internal Key<Datum<T>> Choice<T>(string name, string example, string about, Choices<T> choices, Need? need = null) =>
        Datum(name, example, about, new ChoiceForm<T>(choices), need);

    internal Key<Datum<int>> Whole(string name, string example, string about, int low, int high) =>
        Datum(name, example, about, new WholeForm(low, high), null);

    internal Key<Datum<bool>> Flag(string name, string example, string about) => Datum(name, example, about, new FlagForm(), null);

    internal Key<Datum<string>> Text(string name, string example, string about, Need? need = null) =>
        Datum(name, example, about, new TextForm(), need);

    internal Key<Datum<T>> Datum<T>(string name, string example, string about, Form<T> form, Need? need) =>
        Add(new DatumKey<T>(name, example, about, form, need ?? Need.No));

    /// <summary>A group that is always made, of what there is.</summary>
    internal Key<T> Part<T>(string name, string about, Section<T> section, Need? need = null, (string Word, T Value)? word = null)
        where T : class => Add(new PartKey<T>(name, about, section, need ?? Need.No, isAlwaysMade: true, word));

    /// <summary>A group that is there or is not.</summary>
    internal Key<T> Group<T>(string name, string about, Section<T> section)
        where T : class => Add(new PartKey<T>(name, about, section, Need.No, isAlwaysMade: false, null));

    internal Key<IReadOnlyList<T>> List<T>(string name, string about, Section<T> section, string? emptyWord = null)
        where T : class => Add(new ListKey<T>(name, about, section, emptyWord));

    internal T Add<T>(T key)
        where T : Key
    {
        all.Add(key);
        return key;
    }
}
