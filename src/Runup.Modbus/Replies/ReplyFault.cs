namespace Runup.Modbus.Replies;

/// <summary>Why bytes are no answer to the request that was asked.</summary>
public enum ReplyFault
{
    /// <summary>There is no byte.</summary>
    Empty,

    /// <summary>It answers another function.</summary>
    OtherFunction,

    /// <summary>It answers for another unit.</summary>
    OtherUnit,

    /// <summary>It is shorter or longer than its own fields say or than the request wants.</summary>
    WrongLength,

    /// <summary>Its byte count does not agree with the number of registers asked for.</summary>
    WrongByteCount,

    /// <summary>It should repeat what was asked, and does not.</summary>
    WrongEcho,

    /// <summary>Its identification objects do not agree with their count, their order or the request.</summary>
    WrongObjects,

    /// <summary>The frame's head is not that of Modbus TCP; where the next frame begins is lost.</summary>
    NotModbus,
}
