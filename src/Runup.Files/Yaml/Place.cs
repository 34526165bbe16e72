using System.Runtime.InteropServices;

namespace Runup.Files.Yaml;

/// <summary>Where something stands in a text: for people as line and column, for edits as a span of characters.</summary>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column, counted from 1.</param>
/// <param name="Start">First character, counted from 0.</param>
/// <param name="End">The character after the last.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Place(int Line, int Column, int Start, int End)
{
    /// <summary>The start of a file.</summary>
    public static Place First { get; } = new(1, 1, 0, 0);
}
