using Runup.Dynamics;
using Runup.Quantities;

namespace Runup.Cli.Simulate;

/// <summary>What was typed after <c>fault</c>: a fault of the conductors to the motor, none, or nothing that can be understood.</summary>
internal abstract record TypedFault
{
    private const string WouldDo = "open U, earth U 20 ohm, short U V 5 ohm or none would do";

    private TypedFault()
    {
    }

    internal static TypedFault Read(string[] words) => words switch
    {
        [] => new Unclear($"which fault? {WouldDo}"),
        ["none"] => new Whole(),
        ["open", var phase] when Phase(phase) is { } open => new There(new OutputFault.PhaseOpen(open), $"phase {open} to the motor is open"),
        ["earth", var phase, .. var ohms] when Phase(phase) is { } earthed => Through(
            ohms, r => new There(new OutputFault.ToEarth(earthed, r), $"phase {earthed} to the motor touches earth{Ohms(r)}")),
        ["short", var one, var other, .. var ohms] when Phase(one) is { } first && Phase(other) is { } second && first != second => Through(
            ohms, r => new There(new OutputFault.BetweenPhases(first, second, r), $"phases {first} and {second} to the motor touch{Ohms(r)}")),
        _ => new Unclear($"'{string.Join(' ', words)}' is no fault that is known; {WouldDo}"),
    };

    private static TypedFault Through(string[] ohms, Func<Resistance, TypedFault> made) => ohms.Length == 0
        ? made(Resistance.FromOhms(0))
        : QuantityText.Read<Resistance>(string.Join(' ', ohms)) switch
        {
            Reading<Resistance>.Value value => made(value.Quantity),
            Reading<Resistance>.Problem problem => new Unclear($"{problem.Found}; {problem.WouldDo}"),
            _ => throw new InvalidOperationException("A reading is a value or a problem."),
        };

    private static string Ohms(Resistance resistance) => resistance.Ohms > 0 ? $" through {resistance.Ohms:0.###} ohm" : "";

    private static OutputPhase? Phase(string word) => word.ToUpperInvariant() switch
    {
        "U" => OutputPhase.U,
        "V" => OutputPhase.V,
        "W" => OutputPhase.W,
        _ => null,
    };

    /// <summary>There is one.</summary>
    internal sealed record There(OutputFault Fault, string Said) : TypedFault;

    /// <summary>There is none any more.</summary>
    internal sealed record Whole : TypedFault;

    /// <summary>Not understood.</summary>
    internal sealed record Unclear(string Why) : TypedFault;
}
