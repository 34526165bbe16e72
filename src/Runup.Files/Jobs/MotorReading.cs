using Runup.Commissioning.Survey;

namespace Runup.Files.Jobs;

/// <summary>What came of reading a file for its motor: the motor, or everything that is wrong with the file. Nothing else.</summary>
public abstract record MotorReading
{
    private MotorReading()
    {
    }

    /// <summary>The file tells a motor.</summary>
    /// <param name="Motor">The motor.</param>
    /// <param name="Tag">The equipment tag, or null.</param>
    /// <param name="Notes">What a person should know of how it was read.</param>
    public sealed record Read(MotorSurvey Motor, string? Tag, IReadOnlyList<FileNote> Notes) : MotorReading;

    /// <summary>The file tells none.</summary>
    /// <param name="Problems">All that is wrong with it, in its order.</param>
    public sealed record Faulty(IReadOnlyList<FileProblem> Problems) : MotorReading;
}
