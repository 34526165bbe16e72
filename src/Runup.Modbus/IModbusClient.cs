using Runup.Modbus.Replies;
using Runup.Modbus.Requests;

namespace Runup.Modbus;

/// <summary>One link to one or more servers, whatever carries it; one request is outstanding at a time.</summary>
public interface IModbusClient : IAsyncDisposable
{
    /// <summary>Asks and waits for the answer. What the world does wrong is an outcome, never an exception.</summary>
    /// <param name="unit">Who is asked.</param>
    /// <param name="request">What is asked.</param>
    /// <param name="timeout">How long to wait for the answer, counted from sending; null for the link's own.</param>
    /// <param name="cancellationToken">Gives up waiting; a request already sent may still be carried out.</param>
    /// <exception cref="OperationCanceledException">The caller gave up.</exception>
    Task<ModbusOutcome<ModbusReply>> SendAsync(
        UnitId unit, ModbusRequest request, TimeSpan? timeout = null, CancellationToken cancellationToken = default);
}
