using Runup.Commissioning.Survey;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Handover.ControlSystem;

/// <summary>What whoever programs the control system has to know of the drive, worked out from its profile and from what it holds.</summary>
public sealed record ProgrammersPage
{
    private ProgrammersPage()
    {
    }

    /// <summary>Whether the figures are of what the drive was left with; else of what the sheet asks for.</summary>
    public required bool IsAsLeft { get; init; }

    /// <summary>Where the drive takes its run command from, in a sentence.</summary>
    public required string WhoCommands { get; init; }

    /// <summary>How it is reached, and how registers are counted: name and value.</summary>
    public required IReadOnlyList<(string Name, string Value)> Link { get; init; }

    /// <summary>Command word, reference and status word.</summary>
    public required IReadOnlyList<RegisterRow> Registers { get; init; }

    /// <summary>Whether command and status word take 32 bits, of which 16 mean something.</summary>
    public required bool IsWide { get; init; }

    /// <summary>Bits of the command word.</summary>
    public required IReadOnlyList<BitRow> CommandBits { get; init; }

    /// <summary>Bits of the status word.</summary>
    public required IReadOnlyList<BitRow> StatusBits { get; init; }

    /// <summary>Words to write.</summary>
    public required IReadOnlyList<WordRow> CommandWords { get; init; }

    /// <summary>States, as the masked status word tells them.</summary>
    public required IReadOnlyList<WordRow> StatusWords { get; init; }

    /// <summary>Why no start over the bus is written down here; null where it is.</summary>
    public string? NoStart { get; init; }

    /// <summary>Steps from rest to running.</summary>
    public required IReadOnlyList<string> Start { get; init; }

    /// <summary>How it is stopped.</summary>
    public required IReadOnlyList<string> Stop { get; init; }

    /// <summary>Run commands worked out.</summary>
    public required IReadOnlyList<ReferenceExample> References { get; init; }

    /// <summary>What can be read.</summary>
    public required IReadOnlyList<RegisterRow> Readings { get; init; }

    /// <summary>What happens when the control system falls silent.</summary>
    public required IReadOnlyList<string> Silence { get; init; }

    /// <summary>Trip codes with their causes.</summary>
    public required IReadOnlyList<(string Code, string Cause)> Trips { get; init; }

    /// <summary>The page of a set; null where the profile does not tell how the drive is commanded.</summary>
    /// <param name="job">The set as surveyed.</param>
    /// <param name="profile">The drive's profile.</param>
    /// <param name="held">The settings that it holds.</param>
    /// <param name="values">The same as its parameters.</param>
    /// <param name="isAsLeft">Whether they were read of the drive.</param>
    /// <param name="ownControlOnly">Why the machine is run from its own control only; null where it may be run over the bus.</param>
    public static ProgrammersPage? Of(Job job, DriveProfile profile, SettingSet held, ParameterValues values, bool isAsLeft, string? ownControlOnly = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(held);
        if (profile.Command is not { } command)
        {
            return null;
        }

        var both = held.Choice(Setting.PermittedDirection) is "both";
        var mayReverse = held.Choice(Setting.PermittedDirection) is not "forward";
        return new()
        {
            IsAsLeft = isAsLeft,
            WhoCommands = ownControlOnly is { } why ? $"{why} No start over the bus is written down here, and Runup sends none. {Now(held)}" : Source(held),
            NoStart = ownControlOnly,
            Link = [.. LinkFacts.Of(job.Bus, held), .. LinkFacts.Numbering(command)],
            Registers = [RegisterRow.Of("command word", command.Word, values, "bits, see below"), RegisterRow.Of("reference", command.Reference, values), RegisterRow.Of("status word", command.Status, values, "bits, see below")],
            IsWide = command.Word.Width == 32,
            CommandBits = ownControlOnly is null ? BitRow.OfCommand(command, mayReverse) : [],
            StatusBits = BitRow.OfStatus,
            CommandWords = [.. WordRow.OfCommand(command, mayReverse).Where(w => ownControlOnly is null || !w.IsOnTheWayToRun)],
            StatusWords = WordRow.OfStatus,
            Start = ownControlOnly is null ? [.. StartAndStop.Start(command)] : [],
            Stop = [.. StartAndStop.Stop(command, held)],
            References = ownControlOnly is not null ? [] : [.. Frequencies(job.Operation).SelectMany(f => both ? (Rotation[])[Rotation.Forward, Rotation.Reverse] : [Rotation.Forward], (f, r) => ReferenceExample.Of(profile, command, f, r, values)).OfType<ReferenceExample>()],
            Readings = [.. ReadingRows.Of(profile, values, Rated(job))],
            Silence = [.. SilenceFacts.Of(profile, held, values)],
            Trips = [.. profile.Trips.Codes.Select(t => (FormattableString.Invariant($"{t.Code} ({WordRow.Hex(t.Code)})"), t.Cause.Name().Replace('-', ' ')))],
        };
    }

    private static string Source(SettingSet held) => held.Choice(Setting.RunCommandSource) switch
    {
        "bus" => "The drive takes its run command from the bus: what is written here can start the motor.",
        { } other => $"The drive takes its run command from: {other}. What is written here starts the motor only after that setting is changed.",
        null => "Where the drive takes its run command from is not known: assume that what is written here can start the motor.",
    };

    private static string Now(SettingSet held) => held.Choice(Setting.RunCommandSource) is { } source
        ? $"The drive takes its run command from: {source}."
        : "Where the drive takes its run command from is not known: find out.";

    // Lowest, seven tenths of highest in whole hertz, highest.
    private static IEnumerable<ElectricalFrequency> Frequencies(OperationSurvey operation)
    {
        var highest = operation.MaximumFrequency.Value.Hertz;
        return ((double[])[operation.MinimumFrequency?.Value.Hertz ?? 0, Math.Floor(0.7 * highest), highest])
            .Where(f => f > 0 && f <= highest).Distinct().Order().Select(ElectricalFrequency.FromHertz);
    }

    // As an example, so that each column of digits has a value that a person knows.
    private static DriveReadings Rated(Job job) => new()
    {
        OutputFrequency = job.Motor.Plate.Frequency.Value,
        OutputCurrent = job.Motor.Plate.Current.Value,
        DcBus = DcVoltage.FromVolts(Math.Round(Math.Sqrt(2) * job.Supply.Voltage.Value.Volts)),
        OutputVoltage = job.Motor.Plate.Voltage.Value,
        Torque = Fraction.FromRatio(1),
        Speed = job.Motor.Plate.Speed.Value,
    };
}
