using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.Entry.ByHand;

/// <summary>A person reads the drive's display, and what was seen is kept in the record: as found, where it was never read before.</summary>
public static class ReadByHand
{
    /// <summary>Asks for these parameters; goes on where an earlier look was broken off.</summary>
    public static async Task<DriveRead> Run(
        string tag, DriveProfile profile, DriveSize size, IReadOnlyList<Parameter> parameters, IPersonAtDisplay person, IRecords records, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(parameters);
        var record = await records.Of(tag, cancellation);
        var identity = HandHistory.Identity(profile);
        var before = HandHistory.Of(profile, record);
        var moment = EntryHistory.Of(record).AsFound.ContainsKey(identity) ? Moments.Read : Moments.AsFound;
        var look = new LookThrough(tag, identity, new HandLook(profile, size, person, new Dictionary<string, string>(StringComparer.Ordinal)), records);
        var factory = ParameterValues.Defaults(profile, size);
        return await look.Run(moment, LookFor.Found, parameters, p => before.Known.TryGetValue(p.Number, out var raw) ? raw : factory[p.Number]!.Value, before, cancellation) is { } seen
            ? new DriveRead.Read(identity, moment, seen)
            : new DriveRead.BrokenOff(parameters.Count);
    }
}
