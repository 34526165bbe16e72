using System.Runtime.InteropServices;
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

    /// <summary>Reads a value that is not empty; null with a problem where it can't be.</summary>
    internal abstract FormReading<T>? Read(YamlScalar scalar, Desk desk);

    /// <summary>The schema's definition of the value, where several keys share one.</summary>
    internal virtual string? Definition => null;

    /// <summary>What it must look like, for an editor.</summary>
    internal abstract JsonObject Schema();
}

/// <summary>A value that was read.</summary>
/// <typeparam name="T">What it is.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="RoundingSi">Half of its last printed digit in SI; zero where it has no digits.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct FormReading<T>(T Value, double RoundingSi);
