using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.Entry.ByHand;

/// <summary>
/// Has a person enter a sheet at the drive's own display, in the same order and with the same record as over a link: as found
/// first, each line asked for before and kept after it was seen, the power taken away, and the changed ones looked at again.
/// </summary>
/// <remarks>The record is the only state: whenever it is cut off, another call goes on. One instance enters once.</remarks>
/// <param name="task">What is to be entered.</param>
/// <param name="lookAt">What is looked at first, to be kept as found.</param>
/// <param name="why">Why each parameter is to have its value, in few words, by number.</param>
/// <param name="person">Who stands at the display.</param>
/// <param name="records">Where all is kept.</param>
public sealed class EnterByHand(EntryTask task, IReadOnlyList<Parameter> lookAt, IReadOnlyDictionary<string, string> why, IPersonAtDisplay person, IRecords records)
{
    /// <summary>Enters the sheet. Cancelling ends it at the question under way.</summary>
    public Task<EntryReport> Run(CancellationToken cancellation)
    {
        var book = new EntryBook(task.Sheet);
        var course = new EntryCourse(task, book, records);
        var way = new EntryAtDisplay(task, book, lookAt, new HandLook(task.Profile, task.Size, person, why), records);
        return course.Run(c => course.Steps(way, c), cancellation);
    }
}
