using Runup.Modbus.Replies;

namespace Runup.Modbus;

/// <summary>How one exchange with a server ended; a closed set. Only <see cref="Answered"/> says that a write was carried out, and only <see cref="Refused"/> that it was not.</summary>
/// <typeparam name="T">What an answer holds.</typeparam>
public abstract record ModbusOutcome<T>
{
    private ModbusOutcome()
    {
    }

    /// <summary>The server carried the request out.</summary>
    /// <param name="Value">What it answered.</param>
    public sealed record Answered(T Value) : ModbusOutcome<T>
    {
        /// <inheritdoc />
        public override string ToString() => $"answered: {Value}";
    }

    /// <summary>The server answered with an exception.</summary>
    /// <param name="Code">Its code.</param>
    public sealed record Refused(ExceptionCode Code) : ModbusOutcome<T>
    {
        /// <inheritdoc />
        public override string ToString() => $"refused with exception {Code}";
    }

    /// <summary>No answer came in time. The request may have been carried out all the same; its late answer will be discarded.</summary>
    /// <param name="After">The time-out.</param>
    public sealed record TimedOut(TimeSpan After) : ModbusOutcome<T>
    {
        /// <inheritdoc />
        public override string ToString() => $"no answer within {After.TotalSeconds:0.###} s";
    }

    /// <summary>The connection is gone.</summary>
    /// <param name="Why">What the system says.</param>
    /// <param name="MayHaveArrived">False when no byte of the request was sent; true when it may have been carried out.</param>
    public sealed record ConnectionLost(string Why, bool MayHaveArrived) : ModbusOutcome<T>
    {
        /// <inheritdoc />
        public override string ToString() => $"connection lost: {Why}";
    }

    /// <summary>Something came that is no answer to the request. It may have been carried out all the same.</summary>
    /// <param name="Fault">What is wrong with it.</param>
    public sealed record Malformed(ReplyFault Fault) : ModbusOutcome<T>
    {
        /// <inheritdoc />
        public override string ToString() => $"the reply is malformed: {ReplyFaultWords.Of(Fault)}";
    }

    /// <summary>The same ending with another answer.</summary>
    /// <typeparam name="TOther">What the other answer holds.</typeparam>
    /// <param name="map">Makes the other answer from this one.</param>
    public ModbusOutcome<TOther> Map<TOther>(Func<T, TOther> map)
    {
        ArgumentNullException.ThrowIfNull(map);
        return this switch
        {
            Answered answered => new ModbusOutcome<TOther>.Answered(map(answered.Value)),
            Refused refused => new ModbusOutcome<TOther>.Refused(refused.Code),
            TimedOut timedOut => new ModbusOutcome<TOther>.TimedOut(timedOut.After),
            ConnectionLost lost => new ModbusOutcome<TOther>.ConnectionLost(lost.Why, lost.MayHaveArrived),
            Malformed malformed => new ModbusOutcome<TOther>.Malformed(malformed.Fault),
            _ => throw new InvalidOperationException("The set of outcomes is closed."),
        };
    }
}
