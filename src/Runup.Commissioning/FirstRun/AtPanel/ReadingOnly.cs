using Runup.Commissioning.Entry;
using Runup.Profiles;

namespace Runup.Commissioning.FirstRun.AtPanel;

/// <summary>A link over which nothing but readings goes, whoever asks for more.</summary>
internal sealed class ReadingOnly(IDriveLink link) : IDriveLink
{
    private static readonly LinkReply<Written> Never = new LinkReply<Written>.Refused("a person runs the motor; Runup only reads");

    public string Description => link.Description;

    public Task<LinkReply<string>> Identify(CancellationToken cancellation) => link.Identify(cancellation);

    public Task<LinkReply<IReadOnlyDictionary<string, long>>> Read(IReadOnlyList<Parameter> parameters, CancellationToken cancellation) => link.Read(parameters, cancellation);

    public Task<LinkReply<DriveStatus>> Status(CancellationToken cancellation) => link.Status(cancellation);

    public Task<LinkReply<Written>> Write(Parameter parameter, long raw, CancellationToken cancellation) => Task.FromResult(Never);

    public Task<LinkReply<Written>> Store(CancellationToken cancellation) => Task.FromResult(Never);

    public Task<LinkReply<Written>> Command(LinkCommand command, CancellationToken cancellation) => Task.FromResult(Never);

    public ValueTask DisposeAsync() => link.DisposeAsync();
}
