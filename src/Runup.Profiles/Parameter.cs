using Runup.Settings;

namespace Runup.Profiles;

/// <summary>One parameter of a drive, as its manual's table tells it.</summary>
public sealed record Parameter
{
    /// <summary>The make's number or index, such as <c>104</c> or <c>6046h:1</c>.</summary>
    public required string Number { get; init; }

    /// <summary>The name on the make's list.</summary>
    public required string Name { get; init; }

    /// <summary>Group or menu that it stands in.</summary>
    public required string Group { get; init; }

    /// <summary>What values it takes.</summary>
    public required ParameterForm Form { get; init; }

    /// <summary>PDU address from 0 of its register; of 32 bits the lower.</summary>
    public required ushort Register { get; init; }

    /// <summary>Bits, 16 or 32.</summary>
    public int Width { get; init; } = 16;

    /// <summary>Whether the register holds two's complement.</summary>
    public bool Signed { get; init; }

    /// <summary>Order of the words of 32 bits.</summary>
    public WordOrder WordOrder { get; init; }

    /// <summary>When it may be written.</summary>
    public required ParameterAccess Access { get; init; }

    /// <summary>Whether the drive's store procedure keeps it through power-off.</summary>
    public bool Stored { get; init; } = true;

    /// <summary>Whether a new value acts only after the drive was off and on again.</summary>
    public bool NeedsRestart { get; init; }

    /// <summary>Factory value in counts, where neither the size nor another parameter gives another.</summary>
    public required long Default { get; init; }

    /// <summary>Where the factory value comes from, if another parameter decides it; null where none does.</summary>
    public Dependent? DefaultFrom { get; init; }

    /// <summary>What another parameter permits at least; null where the row's range alone holds.</summary>
    public Dependent? NotBelow { get; init; }

    /// <summary>What another parameter permits at most; null where the row's range alone holds.</summary>
    public Dependent? NotAbove { get; init; }

    /// <summary>Whether a new value sets every parameter whose factory value depends on it to that again.</summary>
    public bool Resets { get; init; }

    /// <summary>The make-independent settings that it carries; null where it carries none.</summary>
    public Meaning? Meaning { get; init; }

    /// <summary>Settings that it may carry, which nobody has confirmed: nothing is written for them.</summary>
    public IReadOnlyList<Setting> Perhaps { get; init; } = [];

    /// <summary>Numbers of parameters that the manual wants entered before it.</summary>
    public IReadOnlyList<string> After { get; init; } = [];

    /// <summary>Registers that it takes up.</summary>
    public int RegisterCount => Width / 16;

    /// <summary>Whether it is a value that a record keeps and a restore writes: neither reading, command nor action.</summary>
    public bool IsKept => Access is ParameterAccess.AnyTime or ParameterAccess.StoppedOnly;

    /// <summary>The parameters on whose values its range depends, beside those that its unit, its meaning and its manual name.</summary>
    public IEnumerable<string> BoundBy => new[] { NotBelow, NotAbove }.OfType<Dependent>().Select(d => d.Parameter);

    /// <summary>Range on a size of the drive whatever the other parameters hold, in counts; of choices the lowest and highest.</summary>
    public ParameterRange Range(DriveSize size) => size.Ranges.TryGetValue(Number, out var range) ? range : Form switch
    {
        ParameterForm.Numeric n => new(n.Low, n.High),
        ParameterForm.Choices c => new(c.Values.Min(v => v.Raw), c.Values.Max(v => v.Raw)),
        _ => throw new InvalidOperationException("Every form of parameter is told apart."),
    };

    /// <summary>Whether a size of the drive can take this value at all; what the others hold may forbid it.</summary>
    public bool Accepts(long raw, DriveSize size) => Form is ParameterForm.Numeric n ? n.Accepts(raw, Range(size)) : Form.Accepts(raw);

    /// <inheritdoc/>
    public override string ToString() => $"{Number} {Name}";
}
