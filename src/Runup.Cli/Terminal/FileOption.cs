using Spectre.Console;

namespace Runup.Cli.Terminal;

/// <summary>Files that a call is to write.</summary>
internal static class FileOption
{
    /// <summary>Whether the name has its ending and something before it: another ending is a slip, and could lie on the job file itself.</summary>
    internal static ValidationResult Named(string option, string? file, string ending) =>
        file is null || (file.EndsWith(ending, StringComparison.OrdinalIgnoreCase) && Path.GetFileName(file).Length > ending.Length)
            ? ValidationResult.Success()
            : ValidationResult.Error($"{option} '{file}' would not do; a file whose name ends in {ending} would");

    /// <summary>Before any work: the folder must be there, and no folder of the file's name.</summary>
    /// <exception cref="Complaint">It can't be written there.</exception>
    internal static void RequirePlace(string option, string? file)
    {
        if (file is null)
        {
            return;
        }

        var folder = Path.GetDirectoryName(Path.GetFullPath(file))!;
        if (!Directory.Exists(folder))
        {
            throw new Complaint(ExitStatus.BadInput, $"runup: {option} '{file}' would not do: there is no folder {folder}; a folder that is there would do");
        }

        if (Directory.Exists(file))
        {
            throw new Complaint(ExitStatus.BadInput, $"runup: {option} '{file}' would not do: there is a folder of this name; another name would do");
        }
    }
}
