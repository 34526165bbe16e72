namespace Runup.Cli.Entry;

/// <summary>A person's interrupt from the keyboard as a cancellation, so that what is under way is finished and recorded first.</summary>
internal sealed class Interruption : IDisposable
{
    private readonly CancellationTokenSource source;

    internal Interruption(CancellationToken cancellation)
    {
        source = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        Console.CancelKeyPress += OnCancel;
    }

    internal CancellationToken Token => source.Token;

    /// <summary>The person says so instead of interrupting from the keyboard.</summary>
    internal void Now() => source.Cancel();

    public void Dispose()
    {
        Console.CancelKeyPress -= OnCancel;
        source.Dispose();
    }

    private void OnCancel(object? sender, ConsoleCancelEventArgs e)
    {
        e.Cancel = true;
        Now();
    }
}
