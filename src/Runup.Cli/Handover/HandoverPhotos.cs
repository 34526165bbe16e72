using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;
using Runup.Files.Photos;
using Runup.Store.Photos;

namespace Runup.Cli.Handover;

/// <summary>The photos of a job: made anew, kept beside the record, ready for the report.</summary>
internal static class HandoverPhotos
{
    /// <summary>Reads and keeps them all; which of them was not kept before is recorded.</summary>
    /// <exception cref="Complaint">A photo can't be read or kept; all of them are told at once.</exception>
    internal static async Task<IReadOnlyList<ReportPhoto>> Keep(LoadedJob job, IReadOnlyList<Recorded> record, IRecords records, CancellationToken cancellation)
    {
        var complaints = new List<string>();
        var photos = new List<ReportPhoto>();
        foreach (var name in SurveyTable.PhotosOf(job.Job))
        {
            switch (PhotoFile.Read(Path.Combine(job.Folder, name)))
            {
                case PhotoReading.Refused refused:
                    complaints.Add($"{Path.Combine(job.Folder, name)}: {refused.Why}; a JPEG or PNG as a camera makes it would do");
                    break;
                case PhotoReading.Taken taken:
                    photos.Add(await Keep(job, name, taken, record, records, cancellation));
                    break;
            }
        }

        return complaints.Count == 0 ? photos : throw new Complaint(ExitStatus.BadInput, complaints);
    }

    private static async Task<ReportPhoto> Keep(LoadedJob job, string name, PhotoReading.Taken taken, IReadOnlyList<Recorded> record, IRecords records, CancellationToken cancellation)
    {
        try
        {
            var kept = new RecordBody.PhotoKept(name, PhotoFolder.Keep(job.Folder, taken.Jpeg.Span), taken.OriginalSha256);
            if (record.All(r => !kept.Equals(r.Body)))
            {
                await records.Append(job.Job.Tag, kept, cancellation);
            }

            return new(name, kept.Sha256, taken.Jpeg, taken.Width, taken.Height);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Complaint(ExitStatus.BadInput, $"runup: the photo {name} can't be kept beside the record: {e.Message}");
        }
    }
}
