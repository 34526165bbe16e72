using System.Collections;

namespace Runup.Modbus;

/// <summary>The contents of one or more neighbouring registers, lowest address first. Immutable; equal when the words are equal.</summary>
public sealed class RegisterValues : IReadOnlyList<ushort>, IEquatable<RegisterValues>
{
    private readonly ushort[] _words;

    /// <summary>Copies the words.</summary>
    /// <param name="words">The words, lowest address first; at least one.</param>
    public RegisterValues(params ReadOnlySpan<ushort> words)
    {
        if (words.IsEmpty)
        {
            throw new ArgumentException("At least one register is needed.", nameof(words));
        }

        _words = words.ToArray();
    }

    private RegisterValues(ushort[] words) => _words = words;

    /// <inheritdoc />
    public int Count => _words.Length;

    /// <inheritdoc />
    public ushort this[int index] => _words[index];

    /// <summary>The words without a copy.</summary>
    public ReadOnlySpan<ushort> AsSpan() => _words;

    /// <inheritdoc />
    public IEnumerator<ushort> GetEnumerator() => ((IEnumerable<ushort>)_words).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc />
    public bool Equals(RegisterValues? other) => other is not null && _words.AsSpan().SequenceEqual(other._words);

    /// <inheritdoc />
    public override bool Equals(object? obj) => Equals(obj as RegisterValues);

    /// <inheritdoc />
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var word in _words)
        {
            hash.Add(word);
        }

        return hash.ToHashCode();
    }

    /// <inheritdoc />
    public override string ToString() => string.Join(' ', _words.Select(word => $"{word:X4}"));

    internal static RegisterValues FromWire(ReadOnlySpan<byte> bigEndian)
    {
        var words = new ushort[bigEndian.Length / 2];
        WireWords.Read(bigEndian, words);
        return new RegisterValues(words);
    }
}
