namespace Runup.Cli.Terminal;

/// <summary>Writes files of a person's own, never over one that is there: somebody may have filled it in.</summary>
internal static class NewFile
{
    /// <summary>Writes it whole or not at all.</summary>
    /// <exception cref="Complaint">A file or folder of this name is there.</exception>
    internal static void Write(string path, byte[] bytes)
    {
        if (Directory.Exists(path))
        {
            throw new Complaint(ExitStatus.BadInput, $"{path}:1:1 (file): there is a folder of this name; another name would do");
        }

        using var file = Made(path);
        try
        {
            file.Write(bytes);
            file.Flush(flushToDisk: true);
        }
        catch (IOException)
        {
            // Half a file would look like one that somebody filled in.
            File.Delete(path);
            throw;
        }
    }

    private static FileStream Made(string path)
    {
        try
        {
            return new FileStream(path, FileMode.CreateNew, FileAccess.Write);
        }
        catch (IOException) when (File.Exists(path))
        {
            throw new Complaint(ExitStatus.BadInput, $"{path}:1:1 (file): it is there already and is left as it is; another name would do");
        }
    }
}
