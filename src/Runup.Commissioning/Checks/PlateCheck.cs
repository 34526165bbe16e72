namespace Runup.Commissioning.Checks;

/// <summary>A check that needs no more than the motor's plate, and the supply where it is known.</summary>
public abstract class PlateCheck : Check
{
    /// <summary>A check of the plate; wrong plate data must not be entered, so a blocker of it holds up entry.</summary>
    /// <param name="id">Its id in the closed list.</param>
    protected PlateCheck(string id)
        : base(id, Stage.Entry)
    {
    }

    /// <inheritdoc/>
    public sealed override CheckResult Judge(JobContext context) => Judge(context.Plate);

    /// <summary>Puts the question to a plate.</summary>
    public abstract CheckResult Judge(PlateContext context);

    /// <summary>Says that the plate's figures don't allow the question.</summary>
    private protected CheckResult NotAnInductionPlate(PlateContext context) => context.IsInduction
        ? Unknown("a plate whose output, voltage, current, frequency and speed are those of a motor", "whether the figures go together")
        : Unknown("data of the motor's own kind; these checks are those of induction motors", "whether the figures go together");
}
