using Runup.Commissioning.Entry;

namespace Runup.Commissioning.FirstRun;

/// <summary>A link to a drive that has said what it is.</summary>
/// <param name="Link">The link, owned by the caller.</param>
/// <param name="Identity">What the drive says it is.</param>
internal sealed record KnownDrive(IDriveLink Link, string Identity)
{
    /// <summary>Opens the link and asks; or why there is no link.</summary>
    public static async Task<(KnownDrive? Drive, string Lost)> Open(IDriveLinks links, CancellationToken cancellation)
    {
        switch (await links.Open(cancellation))
        {
            case LinkOpening.Failed failed:
                return (null, failed.Why);
            case LinkOpening.Opened opened:
                var (identity, lost) = await EntrySession.WhoIs(opened.Link, cancellation);
                if (lost is null)
                {
                    return (new(opened.Link, identity), "");
                }

                await opened.Link.DisposeAsync();
                return (null, lost);
            default:
                throw new InvalidOperationException("The set of openings is closed.");
        }
    }
}
