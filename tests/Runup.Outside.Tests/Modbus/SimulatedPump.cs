using Runup.Commissioning.Checks;
using Runup.Commissioning.Rehearsal;
using Runup.Files;
using Runup.Files.Jobs;
using Runup.Files.Profiles;
using Runup.Modbus;
using Runup.Modbus.Tcp;
using Runup.Profiles;
using Runup.SimulatedDrive;
using Runup.SimulatedDrive.Clock;

namespace Runup.Outside.Tests.Modbus;

/// <summary>The demo's pump on its simulated drive, served on a port of its own.</summary>
internal static class SimulatedPump
{
    internal static DriveProfile Profile { get; } = ProfileReader.ReadFile(Path.Combine(RepositoryRoot.Folder, "data", "drives", "tern.drive.yaml"), new Problems("tern"))!;

    internal static DriveHost Start(PacedTime time)
    {
        var job = ((JobReading.Read)JobFile.Read(Path.Combine(RepositoryRoot.Folder, "demo", "ostrevad", "swp-101.job.yaml"))).Job;
        var size = Profile.FindSize(job.Drive.Size.Value)!;
        var plant = RehearsalSystem.Of(JobContext.For(job, size.Rating))!;
        return DriveHost.Start(new VirtualDrive(Profile, size, plant), time, TimeProvider.System, new UnitId(1), new ModbusTcpServerOptions()).Host!;
    }
}
