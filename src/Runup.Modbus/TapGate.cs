namespace Runup.Modbus;

/// <summary>Lets one thread at a time through to a tap, if there is one.</summary>
internal sealed class TapGate(FrameTap? tap, TimeProvider time)
{
    private readonly Lock _gate = new();

    public void Show(FrameDirection direction, ReadOnlySpan<byte> bytes)
    {
        if (tap is null)
        {
            return;
        }

        lock (_gate)
        {
            tap(direction, time.GetUtcNow(), bytes);
        }
    }
}
