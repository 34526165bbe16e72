using Runup.Commissioning.Entry;
using Runup.Modbus;

namespace Runup.DriveLink;

/// <summary>How an exchange on the wire ended, in commissioning's terms.</summary>
internal static class Replies
{
    // Taken, and still at work: nobody knows yet what comes of it. And a gateway's word tells nothing of the drive behind it.
    private static readonly ExceptionCode[] SayNothing =
        [ExceptionCode.Acknowledge, ExceptionCode.GatewayPathUnavailable, ExceptionCode.GatewayTargetDeviceFailedToRespond];

    public static LinkReply<TOther> As<T, TOther>(this ModbusOutcome<T> outcome, Func<T, TOther> map) => outcome switch
    {
        ModbusOutcome<T>.Answered answered => new LinkReply<TOther>.Answered(map(answered.Value)),
        ModbusOutcome<T>.Refused refused when SayNothing.Contains(refused.Code) => new LinkReply<TOther>.Unanswered($"exception {refused.Code}"),
        ModbusOutcome<T>.Refused refused => new LinkReply<TOther>.Refused($"exception {refused.Code}"),
        _ => new LinkReply<TOther>.Unanswered(outcome.ToString()),
    };

    public static LinkReply<Written> AsWritten<T>(this ModbusOutcome<T> outcome) => outcome.As(_ => default(Written));
}
