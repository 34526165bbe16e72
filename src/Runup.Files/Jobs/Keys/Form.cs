using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Keys;

/// <summary>How a single value is read.</summary>
/// <typeparam name="T">What it becomes.</typeparam>
internal abstract class Form<T>
{
    /// <summary>What would do, in words.</summary>
    internal abstract string Wanted { get; }

    /// <summary>The words that it takes, where it takes a few.</summary>
    internal virtual IReadOnlyList<string> Words => [];

    /// <summary>Reads a value that is not empty; false with a problem where it can't be.</summary>
    /// <param name="scalar">The value as it stands in the file.</param>
    /// <param name="desk">Where problems go.</param>
    /// <param name="value">What it is.</param>
    /// <param name="roundingSi">Half of its last printed digit in SI; zero where it has no digits.</param>
    internal abstract bool Read(YamlScalar scalar, Desk desk, [MaybeNullWhen(false)] out T value, out double roundingSi);

    /// <summary>The schema's definition of the value, where several keys share one.</summary>
    internal virtual string? Definition => null;

    /// <summary>What it must look like, for an editor.</summary>
    internal abstract JsonObject Schema();
}
