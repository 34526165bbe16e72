using System.Reflection;
using Spectre.Console.Cli;

namespace Runup.Cli.Terminal;

/// <summary>An option at whose end the line stops short, such as <c>--plot</c> without a file.</summary>
/// <remarks>The parser of the command line would put a word of its own there, which then would be a person's name or a file's.</remarks>
internal static class OptionWithoutValue
{
    private static readonly string[] NeverTakeOne = ["--json", "--help", "--version"];

    /// <summary>One sentence about the first of them; null where there is none.</summary>
    internal static string? In(IReadOnlyList<string> arguments)
    {
        var ends = arguments.Where((a, i) => IsLong(a) && !NeverTakeOne.Contains(a, StringComparer.Ordinal) && (i + 1 == arguments.Count || IsLong(arguments[i + 1]))).ToList();
        return ends.Count == 0 ? null : Known().FirstOrDefault(o => o.LongNames.Any(n => ends.Contains($"--{n}", StringComparer.Ordinal))) is { } option
            ? $"--{option.LongNames[0]} needs something after it; --{option.LongNames[0]} {option.ValueName} would do"
            : null;
    }

    private static bool IsLong(string argument) => argument.StartsWith("--", StringComparison.Ordinal) && !argument.Contains('=', StringComparison.Ordinal);

    private static IEnumerable<CommandOptionAttribute> Known() =>
        from type in typeof(OptionWithoutValue).Assembly.GetTypes()
        where type.IsSubclassOf(typeof(CommandSettings))
        from property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
        let option = property.GetCustomAttribute<CommandOptionAttribute>()
        where option is { ValueName: not null, ValueIsOptional: false }
        select option;
}
