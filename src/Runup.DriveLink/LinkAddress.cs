namespace Runup.DriveLink;

/// <summary>Where a drive is reached over Modbus TCP.</summary>
/// <param name="Host">Name or address.</param>
/// <param name="Port">TCP port.</param>
/// <param name="Unit">Unit identifier.</param>
public sealed record LinkAddress(string Host, int Port, byte Unit)
{
    /// <inheritdoc/>
    public override string ToString() => Host.Contains(':', StringComparison.Ordinal) ? $"tcp://[{Host}]:{Port}/{Unit}" : $"tcp://{Host}:{Port}/{Unit}";
}

/// <summary>What the text of a link turned out to be; a closed set.</summary>
public abstract record LinkText
{
    private const string Shape = "tcp://HOST:PORT/UNIT, such as tcp://10.0.0.7:502/1";

    private LinkText()
    {
    }

    /// <summary>Reads <c>tcp://HOST:PORT/UNIT</c>; port 502 and unit 1 where they are left out.</summary>
    public static LinkText Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var trimmed = text.Trim();
        if (trimmed.StartsWith("rtutcp://", StringComparison.OrdinalIgnoreCase) || trimmed.StartsWith("rtu:", StringComparison.OrdinalIgnoreCase))
        {
            return new NotYet($"'{trimmed}' is a serial line; this version reaches drives over Modbus TCP only: {Shape}");
        }

        return trimmed.StartsWith("tcp://", StringComparison.OrdinalIgnoreCase) ? Tcp(trimmed) : new Wrong($"'{trimmed}' is no link; one reads {Shape}");
    }

    private static LinkText Tcp(string text)
    {
        if (!Uri.TryCreate(text, UriKind.Absolute, out var uri) || uri.HostNameType is UriHostNameType.Unknown or UriHostNameType.Basic
            || uri.UserInfo.Length > 0 || uri.Query.Length > 0 || uri.Fragment.Length > 0)
        {
            return new Wrong($"'{text}' is no link; one reads {Shape}");
        }

        var path = uri.AbsolutePath.Trim('/');
        byte unit = 1;
        if (path.Length > 0 && !byte.TryParse(path, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out unit))
        {
            return new Wrong($"'{path}' is no unit; it is a number from 0 to 255");
        }

        return uri.Port == 0
            ? new Wrong($"'{text}' names port 0, at which nobody listens")
            : new Address(new(uri.DnsSafeHost, uri.Port < 0 ? 502 : uri.Port, unit));
    }

    /// <summary>A drive's address.</summary>
    /// <param name="Of">The address.</param>
    public sealed record Address(LinkAddress Of) : LinkText;

    /// <summary>A kind of link that is known and not spoken yet.</summary>
    /// <param name="Why">What can be done instead.</param>
    public sealed record NotYet(string Why) : LinkText;

    /// <summary>No link.</summary>
    /// <param name="Why">What was found and what would do.</param>
    public sealed record Wrong(string Why) : LinkText;
}
