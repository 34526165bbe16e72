namespace Runup.Store;

/// <summary>The right to write the record of a folder: one at a time, given back by the operating system when a process dies.</summary>
internal sealed class WriterLock : IDisposable
{
    private readonly FileStream held;

    private WriterLock(FileStream held) => this.held = held;

    /// <summary>Takes the right, or returns null where another has it. Never waits.</summary>
    /// <exception cref="IOException">The folder can't be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static WriterLock? TryTake(string file)
    {
        try
        {
            return new WriterLock(new FileStream(file, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 1, FileOptions.None));
        }
        catch (IOException e) when (IsHeldByAnother(e))
        {
            return null;
        }
    }

    public void Dispose() => held.Dispose();

    // Linux: EWOULDBLOCK of flock(2), 11; macOS: 35; Windows: ERROR_SHARING_VIOLATION, 0x80070020.
    private static bool IsHeldByAnother(IOException e) => e.HResult is 11 or 35 or unchecked((int)0x80070020);
}
