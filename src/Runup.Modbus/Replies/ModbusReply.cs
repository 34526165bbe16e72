using Runup.Modbus.Identification;

namespace Runup.Modbus.Replies;

/// <summary>What a server answered to a request it carried out; a closed set.</summary>
public abstract record ModbusReply
{
    private ModbusReply()
    {
    }

    /// <summary>To functions 3, 4 and 23: as many registers as were asked for.</summary>
    /// <param name="Values">The words.</param>
    public sealed record Registers(RegisterValues Values) : ModbusReply;

    /// <summary>To functions 6 and 16: the server's echo agrees with the request. That it was accepted does not prove what is stored; read back.</summary>
    /// <param name="Range">The registers written.</param>
    public sealed record Written(RegisterRange Range) : ModbusReply;

    /// <summary>To function 43, MEI type 14.</summary>
    /// <param name="Page">The objects of this reply.</param>
    public sealed record Identification(IdentificationPage Page) : ModbusReply;
}
