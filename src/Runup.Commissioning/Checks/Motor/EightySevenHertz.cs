using Runup.Commissioning.Plan;

namespace Runup.Commissioning.Checks.Motor;

/// <summary>A winding run at rated flux beyond its rated voltage and frequency, as 230 V delta from 400 V to 87 Hz.</summary>
internal sealed class EightySevenHertz() : Check("motor.87hz", Stage.Coupled)
{
    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (!VoltageBeyondRated.IsMeant(context.Plate.Figures.Voltage_V, context.Plate.Figures.Frequency_Hz, context.Job.Supply, context.Job.Operation))
        {
            return Fine("the winding is not run beyond its rated voltage");
        }

        var figures = context.Plate.Figures;
        var corner = context.Meant.Output.BaseFrequency.Hertz;
        return new CheckResult.Violated(Id, Severity.Note, Blocks, new Basis.Physics("P, U and f grow by U_s/U_N at rated flux, torque and current; n = n_s·U_s/U_N − slip speed"))
        {
            Title = "Run beyond its rated frequency at rated flux",
            Explanation = $"Joined for {Said.Number(figures.Voltage_V)} V and fed from {Said.Number(context.Meant.Output.MaximumVoltage.Volts)} V, the motor keeps its flux, torque and {Said.Number(figures.Current_A)} A up to {Said.Number(corner)} Hz, and gives {Said.Kilowatts(figures.Output_W * corner / figures.Frequency_Hz)} there.",
            Remedy = "Make sure that bearings, balance, fan and gear are for that speed and the winding is for a drive; the drive is sized by the current of this connection.",
            Value = corner,
            Limit = figures.Frequency_Hz,
            Unit = "Hz",
        };
    }
}
