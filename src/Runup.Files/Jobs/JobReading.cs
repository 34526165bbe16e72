using Runup.Commissioning.Survey;

namespace Runup.Files.Jobs;

/// <summary>What came of reading a job file: a job, or everything that is wrong with the file. Nothing else.</summary>
public abstract record JobReading
{
    private JobReading()
    {
    }

    /// <summary>The file is a job.</summary>
    /// <param name="Job">The job.</param>
    /// <param name="Notes">What a person should know of how it was read.</param>
    /// <param name="Text">The file's text, for records and edits.</param>
    public sealed record Read(Job Job, IReadOnlyList<FileNote> Notes, string Text) : JobReading;

    /// <summary>The file is no job.</summary>
    /// <param name="Problems">All that is wrong with it, in its order.</param>
    public sealed record Faulty(IReadOnlyList<FileProblem> Problems) : JobReading;
}
