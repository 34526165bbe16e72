using System.Security.Cryptography;
using System.Text;
using Runup.Cli.Survey;
using Runup.Commissioning.Records;

namespace Runup.Cli.Entry;

/// <summary>The job file as the record keeps it.</summary>
internal static class JobTaken
{
    internal static RecordBody.JobTaken Of(LoadedJob job) =>
        new(job.Text, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(job.Text))), ClockSource.Words);
}
