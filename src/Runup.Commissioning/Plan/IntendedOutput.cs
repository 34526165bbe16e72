using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Engineering.Drives;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Plan;

/// <summary>To which voltage and frequency the motor is led, so that its flux stays the rated one as far as the supply reaches.</summary>
/// <remarks>
/// U/f = U_N/f_N up to the base frequency. With enough supply the corner is the plate's own point; below 90 % of the plate's voltage it is where the supply
/// ends, f_b = f_N·U_s/U_N; and for a winding meant to run beyond its rated frequency from a higher supply (230 V delta on 400 V to 87 Hz), it is f_N·U_s/U_N too.
/// </remarks>
/// <param name="BaseFrequency">Where the voltage reaches its maximum.</param>
/// <param name="MaximumVoltage">The voltage there and above.</param>
/// <param name="Reason">Why, with the numbers.</param>
public sealed record IntendedOutput(ElectricalFrequency BaseFrequency, LineVoltage MaximumVoltage, string Reason)
{
    // Within the usual tolerance of a supply nothing is changed: the drive's voltage falls short by a few per cent at most.
    private const double SupplyTolerance = 0.9;

    /// <summary>The corner for a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="plate">The motor's plate; null where its figures are not those of something that turns.</param>
    public static IntendedOutput Of(Job job, Nameplate? plate)
    {
        var (voltage, frequency) = (plate?.Voltage ?? job.Motor.Plate.Voltage.Value, plate?.Frequency ?? job.Motor.Plate.Frequency.Value);
        var (motor_V, motor_Hz, supply_V) = (voltage.Volts, frequency.Hertz, job.Supply.Voltage.Value.Volts);
        var beyond = VoltageBeyondRated.IsMeant(motor_V, motor_Hz, job.Supply, job.Operation);
        if (!beyond && (supply_V >= SupplyTolerance * motor_V || motor_V <= 0 || supply_V <= 0))
        {
            return new(frequency, voltage, $"the plate's own point, {Said.Number(motor_V)} V at {Said.Number(motor_Hz)} Hz");
        }

        var corner_Hz = motor_Hz * (supply_V / motor_V);
        return new(
            ElectricalFrequency.FromHertz(corner_Hz),
            LineVoltage.FromVolts(supply_V),
            $"rated flux as far as the supply reaches: f_N·U_s/U_N = {Said.Number(motor_Hz)} Hz · {Said.Number(supply_V)} V / {Said.Number(motor_V)} V = {Said.Number(corner_Hz)} Hz");
    }

    /// <summary>The voltage characteristic with a shape and a boost.</summary>
    public VoltsPerHertz Characteristic(VoltageShape shape, Fraction boost, LineVoltage rated) => new()
    {
        BaseFrequency = BaseFrequency,
        MaximumVoltage = MaximumVoltage,
        RatedVoltage = rated,
        Shape = shape,
        Boost = boost,
    };
}
