using System.Net;
using Runup.Cli.Survey;
using Runup.SimulatedDrive;
using Runup.SimulatedDrive.Clock;

namespace Runup.Cli.Simulate;

/// <summary>A simulated drive that is being served, on a clock of its own: waiting for one drive's peer holds up no other.</summary>
internal sealed class ServedDrive : IAsyncDisposable
{
    private ServedDrive(LoadedJob job, PacedTime time, DriveHost host) => (Job, Time, Host) = (job, time, host);

    internal LoadedJob Job { get; }

    internal PacedTime Time { get; }

    internal DriveHost Host { get; }

    internal string Link => SimulateCommand.Link(Host, Job);

    internal static ServedDrive Of(LoadedJob job, double rate, IPAddress address, int port)
    {
        var time = new PacedTime(rate, TimeProvider.System);
        try
        {
            return new(job, time, SimulateCommand.Serve(job, time, address, port));
        }
        catch
        {
            time.Dispose();
            throw;
        }
    }

    public async ValueTask DisposeAsync()
    {
        await Host.DisposeAsync();
        Time.Dispose();
    }
}
