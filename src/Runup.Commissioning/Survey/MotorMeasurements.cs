using Runup.Quantities;

namespace Runup.Commissioning.Survey;

/// <summary>What was measured on the motor.</summary>
public sealed record MotorMeasurements
{
    /// <summary>Between two terminals.</summary>
    public Datum<Resistance>? WindingResistance { get; init; }

    /// <summary>Winding temperature at that measurement.</summary>
    public Datum<Temperature>? WindingTemperature { get; init; }

    /// <summary>At rated voltage and frequency.</summary>
    public Datum<LineCurrent>? NoLoadCurrent { get; init; }

    /// <summary>From auto-tune, per phase of the star equivalent.</summary>
    public Datum<Resistance>? StatorResistance { get; init; }

    /// <summary>From auto-tune, per phase of the star equivalent.</summary>
    public Datum<Inductance>? LeakageInductance { get; init; }

    /// <summary>From auto-tune.</summary>
    public Datum<LineCurrent>? MagnetizingCurrent { get; init; }
}
