namespace Runup.Acceptance.Tests;

/// <summary>One run of the demo, looked at from several sides. It has the computer for itself, since its drives run many times as fast as real time.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class DemoRun : IAsyncLifetime, ICollectionFixture<DemoRun>
{
    internal const string Name = "the demo";

    private readonly Scratch scratch = new();

    internal string Folder => Path.Combine(scratch.Folder, "a demo");

    internal Run Run { get; private set; } = new(-1, "", "");

    public async ValueTask InitializeAsync() => Run = await RunupProgram.Call(scratch.Folder, "demo", Folder);

    public ValueTask DisposeAsync()
    {
        scratch.Dispose();
        return ValueTask.CompletedTask;
    }

    internal Task<string> Text(params string[] path) => File.ReadAllTextAsync(Path.Combine([Folder, .. path]), TestContext.Current.CancellationToken);
}
