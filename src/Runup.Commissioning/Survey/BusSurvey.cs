using Runup.Quantities;

namespace Runup.Commissioning.Survey;

/// <summary>The bus to the control system.</summary>
public sealed record BusSurvey
{
    /// <summary>modbus-tcp, modbus-rtu or none.</summary>
    public Datum<string>? Kind { get; init; }

    /// <summary>Unit on the bus.</summary>
    public Datum<int>? Address { get; init; }

    /// <summary>Bits per second.</summary>
    public Datum<int>? Baud { get; init; }

    /// <summary>none, even or odd.</summary>
    public Datum<string>? Parity { get; init; }

    /// <summary>Longest silence.</summary>
    public Datum<Duration>? TimeOut { get; init; }

    /// <summary>none, coast, ramp or hold.</summary>
    public Datum<string>? OnLoss { get; init; }
}
