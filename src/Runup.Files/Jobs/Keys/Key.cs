using System.Text.Json.Nodes;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Keys;

/// <summary>One key of the job file: the one place from which reader, JSON Schema and template know it.</summary>
/// <param name="name">The key.</param>
/// <param name="about">What it is, in a few words for template and editor.</param>
/// <param name="need">Whether it must be there.</param>
internal abstract class Key(string name, string about, Need need)
{
    /// <summary>The key as written.</summary>
    internal string Name { get; } = name;

    /// <summary>What it is, in a few words for template and editor.</summary>
    internal string About { get; } = about;

    /// <summary>Whether it must be there.</summary>
    internal Need Need { get; } = need;

    /// <summary>A value as a person would write it on one line.</summary>
    internal abstract string Example { get; }

    /// <summary>The words that it takes, where it takes a few.</summary>
    internal virtual IReadOnlyList<string> Words => [];

    /// <summary>The group of keys that the value is, or null.</summary>
    internal virtual Section? Section => null;

    /// <summary>Whether the value may stand in braces with where it comes from.</summary>
    internal virtual bool IsDatum => false;

    /// <summary>What would do, in words.</summary>
    internal abstract string Wanted { get; }

    /// <summary>What a person is told when it is missing.</summary>
    internal virtual string WouldDo => $"{Wanted}, such as `{Example}`, would do";

    /// <summary>Reads the value; null with problems where it can't be.</summary>
    internal abstract object? Read(YamlNode node, Desk desk);

    /// <summary>What stands for the key when it is missing; null where nothing does.</summary>
    internal virtual object? Missing(YamlMap parent, Desk desk) => null;

    /// <summary>What the value must look like, for an editor.</summary>
    internal abstract JsonObject Schema();
}

/// <summary>A key whose value becomes a <typeparamref name="T"/>.</summary>
/// <typeparam name="T">What the value becomes.</typeparam>
/// <inheritdoc/>
internal abstract class Key<T>(string name, string about, Need need) : Key(name, about, need)
    where T : class;
