namespace Runup.Modbus.Replies;

/// <summary>What a client makes of the bytes of a reply; a closed set.</summary>
public abstract record ReplyDecoding
{
    private ReplyDecoding()
    {
    }

    /// <summary>The request was carried out.</summary>
    /// <param name="Reply">The answer.</param>
    public sealed record Answered(ModbusReply Reply) : ReplyDecoding;

    /// <summary>The server refused.</summary>
    /// <param name="Code">Why.</param>
    public sealed record Refused(ExceptionCode Code) : ReplyDecoding;

    /// <summary>The bytes are no answer to this request.</summary>
    /// <param name="Fault">Why.</param>
    public sealed record NotAnAnswer(ReplyFault Fault) : ReplyDecoding;
}
