namespace Runup.Files;

/// <summary>One thing that is wrong in a file, where it stands, and what would put it right.</summary>
/// <param name="File">The file as the person named it.</param>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column, counted from 1.</param>
/// <param name="Key">Path of the key, such as <c>motor.plate.output</c>; <c>(file)</c> where the whole file is meant.</param>
/// <param name="Found">What was found.</param>
/// <param name="WouldDo">What would do instead.</param>
public sealed record FileProblem(string File, int Line, int Column, string Key, string Found, string WouldDo)
{
    /// <summary>The key of a problem that concerns the whole file.</summary>
    public const string WholeFile = "(file)";

    /// <summary>The line that a person reads on standard error: <c>FILE:LINE:COLUMN key: found; would do</c>.</summary>
    public override string ToString() => Quote.OneLine($"{File}:{Line}:{Column} {Key}: {Found}; {WouldDo}");
}
