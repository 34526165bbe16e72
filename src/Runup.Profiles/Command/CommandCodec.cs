using Runup.Quantities;

namespace Runup.Profiles;

/// <summary>What the computer asks of a drive in one exchange.</summary>
/// <param name="Word">The control word.</param>
/// <param name="Frequency">Output frequency asked for.</param>
/// <param name="Rotation">Direction asked for.</param>
public readonly record struct DriveCommand(ControlWord Word, ElectricalFrequency Frequency, Rotation Rotation);

/// <summary>Words for consecutive registers.</summary>
/// <param name="Register">PDU address from 0 of the first.</param>
/// <param name="Words">The words.</param>
public sealed record RegisterWords(ushort Register, IReadOnlyList<ushort> Words)
{
    /// <summary>The words of a parameter's value.</summary>
    public static RegisterWords Of(Parameter parameter, long raw) => new(parameter.Register, RegisterImage.Words(parameter, raw));
}

/// <summary>Commands to registers and back, as the profile declares it; both sides of the wire read the same profile.</summary>
public static class CommandCodec
{
    // What binary fractions may lack of a whole count: 300 rpm must not become 299.
    private const decimal Hair = 0.000001m;

    /// <summary>The control word's value for a command: with the reverse bit and the ramp bits that the drive wants.</summary>
    public static long WordRaw(CommandInterface command, DriveCommand asked)
    {
        var word = command.RampBits && PowerMachine.CommandOf(asked.Word) == PowerCommand.EnableOperation ? asked.Word.WithRamp : asked.Word;
        return (command.ReverseBit is { } bit ? word.With(bit, asked.Rotation == Rotation.Reverse) : word).Bits;
    }

    /// <summary>The reference's value for a command; null where it can't be told (rpm, but no pole count) or does not fit.</summary>
    /// <remarks>What the reference can't say exactly is rounded down: no motor is asked for more than was permitted.</remarks>
    public static long? ReferenceRaw(DriveProfile profile, CommandInterface command, DriveCommand asked, ParameterValues values)
    {
        var at = new Surroundings(profile, null, values);
        var own = IsSpeed(command.Reference) ? asked.Frequency.RadiansPerSecond / at.Pairs : asked.Frequency.Hertz;
        if (own is not { } size || at.Counts(command.Reference, size) is not { } counts)
        {
            return null;
        }

        var magnitude = (long)Math.Min(Math.Floor(counts + Hair), long.MaxValue);
        var raw = command.ReverseBit is null && asked.Rotation == Rotation.Reverse ? -magnitude : magnitude;
        return RegisterImage.Fits(command.Reference, raw) ? raw : null;
    }

    /// <summary>The command that the registers hold, as the drive takes it; null where the reference can't be told.</summary>
    public static DriveCommand? Read(DriveProfile profile, CommandInterface command, long wordRaw, long referenceRaw, ParameterValues values)
    {
        var at = new Surroundings(profile, null, values);
        var word = new ControlWord((ushort)wordRaw);
        var own = at.Own(command.Reference, referenceRaw);
        var hertz = IsSpeed(command.Reference) ? own * at.Pairs / (2 * Math.PI) : own;
        if (hertz is not { } signed)
        {
            return null;
        }

        var reverse = command.ReverseBit is { } bit ? word.Has(bit) : signed < 0;
        return new DriveCommand(word, ElectricalFrequency.FromHertz(Math.Abs(signed)), reverse ? Rotation.Reverse : Rotation.Forward);
    }

    /// <summary>Whether a drive follows the reference under this word: operation enabled, ramp following where it has to be told, no halt.</summary>
    public static bool FollowsReference(CommandInterface command, ControlWord word) =>
        PowerMachine.CommandOf(word) == PowerCommand.EnableOperation && !word.IsHalt && (!command.RampBits || word.RampFollows);

    private static bool IsSpeed(Parameter reference) =>
        reference.Form is ParameterForm.Numeric { Unit: ParameterUnit.Fixed unit } && ProfileUnit.Find(unit.Symbol)?.Dimension == Dimension.RotationalSpeed;
}
