namespace Runup.Cli.Terminal;

/// <summary>What the program says on standard error when it can't go on; one line each, never a stack trace.</summary>
internal sealed class Complaint : Exception
{
    internal Complaint(ExitStatus status, params IEnumerable<string> lines)
        : base(string.Join(Environment.NewLine, lines)) => Status = status;

    public Complaint()
    {
    }

    public Complaint(string message)
        : base(message) => Status = ExitStatus.BadInput;

    public Complaint(string message, Exception inner)
        : base(message, inner) => Status = ExitStatus.BadInput;

    internal ExitStatus Status { get; } = ExitStatus.BadInput;
}
