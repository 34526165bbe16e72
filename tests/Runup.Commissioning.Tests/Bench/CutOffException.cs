namespace Runup.Commissioning.Tests.Bench;

/// <summary>As if the process had been killed here.</summary>
public sealed class CutOffException : Exception
{
    public CutOffException()
        : base("cut off")
    {
    }

    public CutOffException(string message)
        : base(message)
    {
    }

    public CutOffException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
