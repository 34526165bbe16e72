
namespace Runup.Commissioning.Checks;

/// <summary>One question put to a set; pure, and without memory of other checks.</summary>
public abstract class Check
{
    /// <summary>A check.</summary>
    /// <param name="id">Its id in the closed list, such as <c>plate.power-unit</c>.</param>
    /// <param name="blocks">The first stage that a blocker of it holds up.</param>
    protected Check(string id, Stage blocks) => (Id, Blocks) = (id, blocks);

    /// <summary>Its id in the closed list.</summary>
    public string Id { get; }

    /// <summary>The first stage that a blocker of it holds up.</summary>
    public Stage Blocks { get; }

    /// <summary>Puts the question.</summary>
    public abstract CheckResult Judge(JobContext context);

    /// <summary>Nothing to object to.</summary>
    protected CheckResult Fine(string because) => new CheckResult.Satisfied(Id, because);

    /// <summary>Cannot be said.</summary>
    protected CheckResult Unknown(string missing, string wouldChange) => new CheckResult.Undecided(Id, missing, wouldChange);
}
