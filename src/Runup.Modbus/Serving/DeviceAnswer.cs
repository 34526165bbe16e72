namespace Runup.Modbus.Serving;

/// <summary>How a device ends a request; the default is <see cref="Done"/>.</summary>
public readonly record struct DeviceAnswer
{
    private DeviceAnswer(ExceptionCode? refusal, bool silent)
    {
        Refusal = refusal;
        IsSilent = silent;
    }

    /// <summary>Carried out.</summary>
    public static DeviceAnswer Done => default;

    /// <summary>No reply at all, as of a device that is not there.</summary>
    public static DeviceAnswer Silent { get; } = new(null, silent: true);

    /// <summary>The exception to answer with, or null.</summary>
    public ExceptionCode? Refusal { get; }

    /// <summary>Whether no reply is sent.</summary>
    public bool IsSilent { get; }

    /// <summary>Refused; a device that refuses a write has changed nothing.</summary>
    /// <param name="code">Why.</param>
    public static DeviceAnswer Refused(ExceptionCode code) => new(code, silent: false);
}
