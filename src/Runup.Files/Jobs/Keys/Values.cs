namespace Runup.Files.Jobs.Keys;

/// <summary>What was read of a group of keys.</summary>
internal sealed class Values
{
    private readonly Dictionary<Key, object> read = [];

    internal void Set(Key key, object value) => read[key] = value;

    internal bool Has(Key key) => read.ContainsKey(key);

    /// <summary>The value of a key that may be missing.</summary>
    internal T? Get<T>(Key<T> key)
        where T : class => read.TryGetValue(key, out var value) ? (T)value : null;

    /// <summary>The value of a key that must be there; asked for only when nothing was wrong.</summary>
    internal T Needed<T>(Key<T> key)
        where T : class => (T)read[key];
}
