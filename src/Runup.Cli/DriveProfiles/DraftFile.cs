using System.Text;
using Runup.Cli.Terminal;
using Runup.Files;
using Runup.Files.Yaml;

namespace Runup.Cli.DriveProfiles;

/// <summary>Saves a draft whole or not at all, and never over a file that is there unless it is told to.</summary>
internal static class DraftFile
{
    internal static void Save(string path, string text, bool replace)
    {
        if (Directory.Exists(path))
        {
            throw new Complaint(ExitStatus.BadInput, $"{path}:1:1 (file): there is a folder of this name; another name would do");
        }

        if (File.Exists(path) && !replace)
        {
            throw new Complaint(ExitStatus.BadInput, $"{path}:1:1 (file): it is there already and is left as it is; another name would do, or --replace");
        }

        var problems = new Problems(path);
        if (YamlTree.Read(text, problems) is null)
        {
            throw new InvalidOperationException("The draft does not read as YAML: " + problems.InOrder()[0]);
        }

        var beside = path + ".part";
        try
        {
            using (var file = new FileStream(beside, FileMode.Create, FileAccess.Write))
            {
                file.Write(Encoding.UTF8.GetBytes(text));
                file.Flush(flushToDisk: true);
            }

            File.Move(beside, path, overwrite: replace);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            File.Delete(beside);
            throw;
        }
    }
}
