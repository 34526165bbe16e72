using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Entry;

/// <summary>A connection to one drive, in the terms of its profile. Never reconnects by itself; never throws for what the world does.</summary>
public interface IDriveLink : IAsyncDisposable
{
    /// <summary>What the link is, for people, such as <c>tcp://10.0.0.7:502/1</c>.</summary>
    string Description { get; }

    /// <summary>What the drive says it is.</summary>
    Task<LinkReply<string>> Identify(CancellationToken cancellation);

    /// <summary>Raw values of these parameters; one that the drive refuses to give is missing from the answer.</summary>
    /// <remarks>Refused only when the drive gave none of them.</remarks>
    Task<LinkReply<IReadOnlyDictionary<string, long>>> Read(IReadOnlyList<Parameter> parameters, CancellationToken cancellation);

    /// <summary>Writes a raw value; says nothing of whether the drive kept it.</summary>
    Task<LinkReply<Written>> Write(Parameter parameter, long raw, CancellationToken cancellation);

    /// <summary>Tells the drive to keep its parameters, by the profile's procedure.</summary>
    Task<LinkReply<Written>> Store(CancellationToken cancellation);

    /// <summary>State and readings in one round.</summary>
    Task<LinkReply<DriveStatus>> Status(CancellationToken cancellation);

    /// <summary>Sends one command with its reference. A run command needs a permit, which the guided first run alone issues.</summary>
    Task<LinkReply<Written>> Command(LinkCommand command, CancellationToken cancellation);
}

/// <summary>What came of an exchange; a closed set.</summary>
/// <typeparam name="T">What an answer carries.</typeparam>
public abstract record LinkReply<T>
{
    private LinkReply()
    {
    }

    /// <summary>The drive answered.</summary>
    /// <param name="Value">The answer.</param>
    public sealed record Answered(T Value) : LinkReply<T>;

    /// <summary>The drive refused.</summary>
    /// <param name="Why">In words, with the exception's number.</param>
    public sealed record Refused(string Why) : LinkReply<T>;

    /// <summary>No usable answer: the request may or may not have been carried out.</summary>
    /// <param name="Why">Timed out, connection lost, or malformed.</param>
    public sealed record Unanswered(string Why) : LinkReply<T>;
}

/// <summary>The drive took a write or command.</summary>
public readonly record struct Written;

/// <summary>State and readings of a drive; a reading that the drive does not offer is null.</summary>
public sealed record DriveStatus
{
    /// <summary>State after IEC 61800-7-201.</summary>
    public required PowerState State { get; init; }

    /// <summary>Whether the output is live or the shaft is being driven or stopped.</summary>
    public required bool Running { get; init; }

    /// <summary>Last trip.</summary>
    public TripCause Trip { get; init; }

    /// <summary>Output frequency, Hz.</summary>
    public double? OutputFrequencyHz { get; init; }

    /// <summary>Output current, A.</summary>
    public double? OutputCurrentA { get; init; }

    /// <summary>DC bus, V.</summary>
    public double? DcBusV { get; init; }

    /// <summary>Output voltage, V.</summary>
    public double? OutputVoltageV { get; init; }

    /// <summary>Torque, % of rated.</summary>
    public double? TorquePercent { get; init; }

    /// <summary>Speed, rpm.</summary>
    public double? SpeedRpm { get; init; }
}
