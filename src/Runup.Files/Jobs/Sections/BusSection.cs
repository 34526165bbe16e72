using Runup.Commissioning.Survey;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Sections;

/// <summary>Keys of the bus to the control system.</summary>
internal sealed class BusSection(KeyList keys) : Section<BusSurvey>(keys)
{
    private readonly Key<Datum<string>> kind = keys.Choice("kind", "modbus-tcp", "kind of bus", Choices.Words("modbus-tcp", "modbus-rtu", "none"));
    private readonly Key<Datum<int>> address = keys.Whole("address", "1", "unit on the bus", 0, 255);
    private readonly Key<Datum<int>> baud = keys.Whole("baud", "19200", "bits per second, serial only", 300, 1_000_000);
    private readonly Key<Datum<string>> parity = keys.Choice("parity", "even", "serial only", Choices.Words("none", "even", "odd"));
    private readonly Key<Datum<Duration>> timeOut = keys.Quantity<Duration>("time-out", "0.4 s", "longest silence before the drive acts", Bound.Any);
    private readonly Key<Datum<string>> onLoss = keys.Choice("on-loss", "ramp", "what the drive does then", Choices.Words("none", "coast", "ramp", "hold"));

    /// <summary>What <c>bus: none</c> says.</summary>
    internal static BusSurvey NoBus { get; } = new() { Kind = new Datum<string>("none", AsWritten: "none") };

    protected override BusSurvey Build(Values v) => new()
    {
        Kind = v.Get(kind),
        Address = v.Get(address),
        Baud = v.Get(baud),
        Parity = v.Get(parity),
        TimeOut = v.Get(timeOut),
        OnLoss = v.Get(onLoss),
    };
}
