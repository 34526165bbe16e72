using Runup.Modbus.Replies;
using Runup.Modbus.Requests;

namespace Runup.Modbus.Tcp;

/// <summary>A request on its way: the first thing that happens to it ends it.</summary>
internal sealed class PendingExchange(TransactionId transaction, UnitId unit, ModbusRequest request, TimeSpan timeout)
{
    private readonly TaskCompletionSource<ModbusOutcome<ModbusReply>> _ending = new(TaskCreationOptions.RunContinuationsAsynchronously);

    public TransactionId Transaction => transaction;

    public Task<ModbusOutcome<ModbusReply>> Ending => _ending.Task;

    /// <summary>Whether a byte of it may have left; false only when that is certain.</summary>
    public volatile bool MayHaveArrived;

    public bool WasGivenUp => _ending.Task.IsCanceled || _ending.Task is { IsCompletedSuccessfully: true, Result: ModbusOutcome<ModbusReply>.TimedOut };

    public bool Take(UnitId answering, ReadOnlySpan<byte> pdu) => _ending.TrySetResult(Judge(answering, pdu));

    public void TimeOut() => _ending.TrySetResult(new ModbusOutcome<ModbusReply>.TimedOut(timeout));

    public void Fail(ReplyFault fault) => _ending.TrySetResult(new ModbusOutcome<ModbusReply>.Malformed(fault));

    public void Lose(string why) => _ending.TrySetResult(new ModbusOutcome<ModbusReply>.ConnectionLost(why, MayHaveArrived));

    public void GiveUp(CancellationToken token) => _ending.TrySetCanceled(token);

    private ModbusOutcome<ModbusReply> Judge(UnitId answering, ReadOnlySpan<byte> pdu)
    {
        if (answering != unit)
        {
            return new ModbusOutcome<ModbusReply>.Malformed(ReplyFault.OtherUnit);
        }

        return ReplyDecoder.Decode(pdu, request) switch
        {
            ReplyDecoding.Answered answered => new ModbusOutcome<ModbusReply>.Answered(answered.Reply),
            ReplyDecoding.Refused refused => new ModbusOutcome<ModbusReply>.Refused(refused.Code),
            ReplyDecoding.NotAnAnswer not => new ModbusOutcome<ModbusReply>.Malformed(not.Fault),
            _ => throw new InvalidOperationException("The set of decodings is closed."),
        };
    }
}
