using Runup.Profiles;

namespace Runup.DriveLink;

/// <summary>What this link last read of the drive's parameters: some readings are a part of one, and a reference in rpm needs the pole count.</summary>
internal sealed class KnownValues
{
    public ParameterValues Values { get; private set; } = ParameterValues.Empty;

    public void Take(string number, long raw) => Values = Values.With(number, raw);

    public void Forget(string number) => Values = Values.Without(number);
}
