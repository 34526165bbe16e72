using System.Net;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Records;
using Runup.Commissioning.Rehearsal;
using Runup.Commissioning.Survey;
using Runup.DriveLink;
using Runup.Files;
using Runup.Files.Jobs;
using Runup.Files.Profiles;
using Runup.Modbus;
using Runup.Modbus.Tcp;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;
using Runup.SimulatedDrive;
using Runup.SimulatedDrive.Clock;

namespace Runup.Acceptance.Tests.OverTheWire;

/// <summary>A set of the demo, the pump unless named, with a simulated drive of a make in real time, and a cable between it and the program that can be cut.</summary>
internal sealed class WireSite : IAsyncDisposable
{
    private readonly PacedTime time = new(1, TimeProvider.System);
    private readonly JobReading.Read read;
    private readonly DriveProfile profile;
    private readonly DriveSize size;
    private readonly JobContext context;
    private readonly SettingsPlan plan;
    private readonly IReadOnlyList<SheetLine> lines;

    internal WireSite(string make, string set = "swp-101", string sizeName = "7.5-400")
    {
        var job = Path.Combine(RunupProgram.Root, "demo", "ostrevad", $"{set}.job.yaml");
        read = (JobReading.Read)JobFile.Read(job);
        profile = ProfileReader.ReadFile(Path.Combine(RunupProgram.Root, "data", "drives", make + ProfileReader.Extension), new Problems(make))!;
        size = profile.FindSize(sizeName)!;
        context = JobContext.For(read.Job, size.Rating);
        plan = SettingsPlan.For(context);
        lines = Sheet.For(profile, size, plan.Values, ParameterValues.Defaults(profile, size));
        var system = RehearsalSystem.Of(context)!;
        var uncoupled = read.Job.Machine.Load.Value == LoadKind.Hoisting ? system : system with { Machine = RehearsalSystem.Uncoupled(system.Machine) };
        Host = DriveHost.Start(
            new VirtualDrive(profile, size, uncoupled), time, TimeProvider.System, new UnitId(1), new ModbusTcpServerOptions { Address = IPAddress.Loopback }).Host!;
        Wire = new CuttableWire(Host.Endpoint);
        Links = new ModbusDriveLinks(new LinkAddress("127.0.0.1", Wire.Port, 1), profile, TimeProvider.System, (direction, _, bytes) =>
        {
            if (direction == FrameDirection.Sent)
            {
                lock (Sent)
                {
                    Sent.Add(bytes.ToArray());
                }
            }
        });
    }

    internal DriveHost Host { get; }

    internal CuttableWire Wire { get; }

    internal ModbusDriveLinks Links { get; }

    internal InMemoryRecords Records { get; } = new(TimeProvider.System);

    /// <summary>Every frame that the program sent.</summary>
    internal List<byte[]> Sent { get; } = [];

    internal async Task<EntryReport> Enter(TestPerson person) => await new EnterSheet(
        new EntryTask { Tag = read.Job.Tag, Profile = profile, Size = size, Sheet = EntrySheet.From(lines) }, Links, Records, person, TimeProvider.System).Run(TestContext.Current.CancellationToken);

    internal async Task<FirstRunReport> FirstRun(TestPerson person) => await new GuidedFirstRun(
        new FirstRunTask
        {
            Job = read.Job,
            Profile = profile,
            Size = size,
            Plan = plan.Values,
            Sheet = EntrySheet.From(lines),
            Predictions = FirstRunPredictions.Of(context, plan, profile, size)!,
        },
        Links,
        Records,
        person,
        TimeProvider.System).Run(TestContext.Current.CancellationToken);

    /// <summary>Requests that write, in order, as the hand-written cases print them.</summary>
    internal IReadOnlyList<string> Writes()
    {
        lock (Sent)
        {
            return [.. Sent.Where(frame => frame[7] is 6 or 16).Select(frame => frame[7] == 6
                ? $"06 {Convert.ToHexString(frame[8..10])} {Convert.ToHexString(frame[10..12])}"
                : $"10 {Convert.ToHexString(frame[8..10])} {Convert.ToHexString(frame[10..12])} {Convert.ToHexString(frame[12..13])} {string.Join(' ', frame[13..].Chunk(2).Select(Convert.ToHexString))}")];
        }
    }

    /// <summary>Control words that the program wrote, in order.</summary>
    internal IReadOnlyList<ControlWord> ControlWords()
    {
        var word = profile.Command!.Word;
        lock (Sent)
        {
            return
            [
                .. from frame in Sent
                   where frame[7] is 6 or 16 && ((frame[8] << 8) | frame[9]) == word.Register
                   let at = (frame[7] == 6 ? 10 : 13) + (word.RegisterCount == 2 && word.WordOrder == WordOrder.HighFirst ? 2 : 0)
                   select new ControlWord((ushort)((frame[at] << 8) | frame[at + 1])),
            ];
        }
    }

    /// <summary>Puts the motor to work past the program, as a control system would: from the bus, without a time-out.</summary>
    internal void RunPastTheProgram(double hertz)
    {
        var drive = Host.Drive;
        var settings = SettingSet.Empty.With(Setting.RunCommandSource, "bus").With(Setting.FrequencyReferenceSource, "bus").With(Setting.BusTimeout, 0);
        foreach (var line in Sheet.For(profile, size, settings, ParameterValues.Defaults(profile, size)))
        {
            Put(drive, line.Parameter!, line.Raw!.Value);
        }

        foreach (var word in (ControlWord[])[ControlWord.Shutdown, ControlWord.SwitchOn, ControlWord.EnableOperation])
        {
            var command = new DriveCommand(word, ElectricalFrequency.FromHertz(hertz), Rotation.Forward);
            Put(drive, profile.Command!.Reference, CommandCodec.ReferenceRaw(profile, profile.Command, command, ParameterValues.Defaults(profile, size))!.Value);
            Put(drive, profile.Command.Word, CommandCodec.WordRaw(profile.Command, command));
        }
    }

    private static void Put(VirtualDrive drive, Parameter parameter, long raw)
    {
        var words = RegisterImage.Words(parameter, raw);
        drive.WriteRegisters(new RegisterRange(parameter.Register, words.Length), words).Refusal.ShouldBeNull(parameter.ToString());
    }

    /// <summary>When the motor began to stop, from a moment on: its frequency falls or its output is off.</summary>
    internal async Task<TimeSpan> StopReaction(long since)
    {
        var highest = 0.0;
        while (TimeProvider.System.GetElapsedTime(since) < TimeSpan.FromSeconds(10))
        {
            var now = Host.Drive.Now;
            highest = Math.Max(highest, now.OutputFrequencyHz);
            if (now.OutputFrequencyHz < highest - 0.02 || now.State != Dynamics.DriveState.Running)
            {
                return TimeProvider.System.GetElapsedTime(since);
            }

            await Task.Delay(5, TestContext.Current.CancellationToken);
        }

        return TimeSpan.MaxValue;
    }

    public async ValueTask DisposeAsync()
    {
        await Wire.DisposeAsync();
        await Host.DisposeAsync();
        time.Dispose();
    }
}
