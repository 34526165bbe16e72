namespace Runup.Modbus;

/// <summary>Which way bytes went, seen from the one who taps.</summary>
public enum FrameDirection
{
    /// <summary>They came in.</summary>
    Received,

    /// <summary>They went out.</summary>
    Sent,
}

/// <summary>Bytes as they stood on the wire, for diagnosis: a whole frame, or, where no frame could be made out, what arrived instead.
/// Calls come one at a time, from whichever thread sent or received, a request's before it leaves; a tap returns quickly and does not throw.</summary>
/// <param name="direction">Which way.</param>
/// <param name="at">When, by the owner's clock.</param>
/// <param name="bytes">The bytes; valid only during the call.</param>
public delegate void FrameTap(FrameDirection direction, DateTimeOffset at, ReadOnlySpan<byte> bytes);
