namespace Runup.Modbus.Replies;

/// <summary>What is wrong with a reply, for people.</summary>
internal static class ReplyFaultWords
{
    internal static string Of(ReplyFault fault) => fault switch
    {
        ReplyFault.Empty => "it is empty",
        ReplyFault.OtherFunction => "it answers another function than was asked",
        ReplyFault.OtherUnit => "it answers for another unit",
        ReplyFault.WrongLength => "it is shorter or longer than it says or than was asked for",
        ReplyFault.WrongByteCount => "its byte count does not agree with the registers asked for",
        ReplyFault.WrongEcho => "it does not repeat what was asked",
        ReplyFault.WrongObjects => "its identification objects do not agree with what was asked",
        ReplyFault.NotModbus => "it is not Modbus TCP; something else may listen at that port",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "The set of faults is closed."),
    };
}
