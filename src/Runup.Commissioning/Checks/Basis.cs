namespace Runup.Commissioning.Checks;

/// <summary>What a limit or figure rests on; it decides how heavy a finding may be.</summary>
public abstract record Basis
{
    private Basis()
    {
    }

    /// <summary>The basis in words, as a finding prints it.</summary>
    public abstract string Text { get; }

    /// <summary>Whether the figure was recalled and not read.</summary>
    public virtual bool FromMemory => false;

    /// <summary>Whether a finding on this basis may hold up a stage.</summary>
    public virtual bool MayBlock => true;

    /// <inheritdoc/>
    public sealed override string ToString() => Text;

    /// <summary>Conservation of energy, arithmetic of the plate, mechanics: needs no table.</summary>
    /// <param name="Formula">The formula, with its symbols.</param>
    public sealed record Physics(string Formula) : Basis
    {
        /// <inheritdoc/>
        public override string Text => Formula;
    }

    /// <summary>What the job's file itself says.</summary>
    /// <param name="Key">The file's key.</param>
    public sealed record JobData(string Key) : Basis
    {
        /// <inheritdoc/>
        public override string Text => $"job file, {Key}";
    }

    /// <summary>The maker's figure for the drive, from its profile.</summary>
    /// <param name="What">Which figure.</param>
    public sealed record MakersData(string What) : Basis
    {
        /// <inheritdoc/>
        public override string Text => $"drive profile, {What}";
    }

    /// <summary>A standard or code.</summary>
    /// <param name="Title">Title with clause or table.</param>
    /// <param name="Recalled">True where the figure was recalled and not read in it.</param>
    public sealed record Standard(string Title, bool Recalled) : Basis
    {
        /// <inheritdoc/>
        public override string Text => Recalled ? $"{Title} (from memory)" : Title;

        /// <inheritdoc/>
        public override bool FromMemory => Recalled;

        /// <inheritdoc/>
        public override bool MayBlock => !Recalled;
    }

    /// <summary>A rule of thumb.</summary>
    /// <param name="Rule">The rule.</param>
    public sealed record CommonPractice(string Rule) : Basis
    {
        /// <inheritdoc/>
        public override string Text => $"common practice, no source: {Rule}";

        /// <inheritdoc/>
        public override bool MayBlock => false;
    }

    /// <summary>A rule of this tool's own for things that can hurt someone; not a limit.</summary>
    /// <param name="Rule">The rule.</param>
    public sealed record SafetyRule(string Rule) : Basis
    {
        /// <inheritdoc/>
        public override string Text => $"rule: {Rule}";
    }
}
