namespace Runup.Commissioning.Records;

/// <summary>An entry could not be put on the disk or read from it: whatever is under way must stop, since it would go unrecorded.</summary>
public sealed class RecordsUnavailableException : Exception
{
    /// <summary>Makes the exception without a reason.</summary>
    public RecordsUnavailableException()
    {
    }

    /// <summary>Makes the exception with a sentence for a person.</summary>
    public RecordsUnavailableException(string message)
        : base(message)
    {
    }

    /// <summary>Makes the exception with a sentence for a person and its cause.</summary>
    public RecordsUnavailableException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
