using Runup.Commissioning.Entry;

namespace Runup.Cli.Entry;

/// <summary>Progress of an entry on standard error where that is a terminal.</summary>
internal sealed class EntryProgress(TextWriter output) : IProgress<EntryEvent>
{
    public void Report(EntryEvent value)
    {
        if (!Console.IsErrorRedirected)
        {
            output.WriteLine(value.Of > 0 ? $"{value.Done}/{value.Of}  {value.Words}" : value.Words);
        }
    }
}
