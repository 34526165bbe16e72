using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>Slip between no load and somewhat above full load by the plate alone, without a circuit.</summary>
/// <remarks>
/// s = s_N (T/T_N) (U_N/U)² (f/f_N): torque in proportion to slip, to the square of flux U/f and to 1/f. At constant U/f the slip speed stays what it is at
/// rated frequency. s slip, T torque, U line voltage, f frequency, N rated.
/// Validity: |T| up to about rated torque, f above about a fifth of rated frequency. Assumptions: straight line from synchronous speed, no drop in the stator resistance.
/// </remarks>
/// <param name="RatedSlip">Full-load slip.</param>
/// <param name="RatedVoltage">Rated voltage.</param>
/// <param name="RatedFrequency">Rated frequency.</param>
/// <param name="Poles">Number of poles.</param>
[Source("fitzgerald", "section 6.5, torque at small slip")]
public sealed record SlipLaw(Slip RatedSlip, LineVoltage RatedVoltage, ElectricalFrequency RatedFrequency, PoleCount Poles)
{
    /// <summary>The law of a plate.</summary>
    public static SlipLaw Of(Nameplate plate) => new(plate.RatedSlip, plate.Voltage, plate.Frequency, plate.Poles);

    /// <summary>Slip at a voltage, a frequency and a part of rated torque; negative torque brakes.</summary>
    public Slip SlipAt(LineVoltage voltage, ElectricalFrequency frequency, Fraction torque)
    {
        var flux = RatedVoltage.Volts / voltage.Volts;
        return Slip.FromRatio(RatedSlip.Ratio * torque.Ratio * flux * flux * frequency.Hertz / RatedFrequency.Hertz);
    }

    /// <summary>Speed at a voltage, a frequency and a part of rated torque.</summary>
    public ShaftSpeed SpeedAt(LineVoltage voltage, ElectricalFrequency frequency, Fraction torque) =>
        frequency.SynchronousSpeed(Poles).At(SlipAt(voltage, frequency, torque));

    /// <summary>Speed at rated flux, that is at constant U/f.</summary>
    public ShaftSpeed SpeedAtRatedFlux(ElectricalFrequency frequency, Fraction torque) =>
        SpeedAt(LineVoltage.FromVolts(RatedVoltage.Volts * frequency.Hertz / RatedFrequency.Hertz), frequency, torque);

    /// <summary>The frequency that gives a speed at rated flux.</summary>
    public ElectricalFrequency FrequencyAtRatedFlux(ShaftSpeed speed, Fraction torque)
    {
        var slipSpeed = RatedSlip.Ratio * RatedFrequency.SynchronousSpeed(Poles).RadiansPerSecond * torque.Ratio;
        return ElectricalFrequency.FromHertz((speed.RadiansPerSecond + slipSpeed) * Poles.Pairs / (2 * Math.PI));
    }

    /// <summary>The part of rated torque at which a speed is had at rated flux; negative brakes.</summary>
    public Fraction TorqueAtRatedFlux(ElectricalFrequency frequency, ShaftSpeed speed)
    {
        var slipSpeed = frequency.SynchronousSpeed(Poles).RadiansPerSecond - speed.RadiansPerSecond;
        return Fraction.FromRatio(slipSpeed / (RatedSlip.Ratio * RatedFrequency.SynchronousSpeed(Poles).RadiansPerSecond));
    }
}
