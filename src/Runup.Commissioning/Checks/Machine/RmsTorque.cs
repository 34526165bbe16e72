namespace Runup.Commissioning.Checks.Machine;

/// <summary>The mean torque of a duty cycle against the motor's rating.</summary>
internal sealed class RmsTorque() : Check("machine.rms-torque", Stage.Coupled)
{
    private const double Rounding = 1.02;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (context.Job.Operation.Cycle.Count == 0)
        {
            return Fine("no duty cycle is named: the load is taken as continuous (machine.torque-range)");
        }

        if (context.Meant.Nameplate is not { } plate)
        {
            return Unknown(JobCheck.NoCircuit(context), "whether the motor stays within its rating over the cycle");
        }

        if (DutyAtMotor.RmsTorque(context, coolingAtRest: 1) is not { } rms)
        {
            return Unknown("parts of the cycle that take time (operation.cycle)", "whether the motor stays within its rating over the cycle");
        }

        var rated = plate.RatedTorque.NewtonMetres;
        if (rms.NewtonMetres > rated * Rounding)
        {
            return Finding(rms.NewtonMetres, rated, Severity.Blocker, new Basis.Physics("T_rms = √(Σ T²·t / Σ t) against T_N = P/ω"), string.Empty);
        }

        var withFanAtRest = Cooling.HasOwnFan(context.Job) == true ? rms : DutyAtMotor.RmsTorque(context, DutyAtMotor.FanOnShaftAtRest)!.Value;
        return withFanAtRest.NewtonMetres > rated * Rounding
            ? Finding(withFanAtRest.NewtonMetres, rated, Severity.Caution, new Basis.CommonPractice("a rest with the fan on the shaft counts a third"), " when rests cool little")
            : Fine($"{Said.Torque(rms.NewtonMetres)} over the cycle of the motor's {Said.Torque(rated)}");
    }

    private CheckResult.Violated Finding(double rms, double rated, Severity severity, Basis basis, string when) =>
        new(Id, severity, Blocks, basis)
        {
            Title = "The duty cycle overheats the motor",
            Explanation = $"Over the cycle the motor gives {Said.Torque(rms)} in the mean of squares{when}, more than its {Said.Torque(rated)}.",
            Remedy = "Longer pauses, less torque, a separate fan, or a larger motor.",
            Value = rms,
            Limit = rated,
            Unit = "N·m",
        };
}
