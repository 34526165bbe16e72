using Runup.Engineering;
using Runup.Engineering.Standards;
using Runup.Quantities;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>Locked-rotor current, code letter, locked-rotor and breakdown torque: each against what is usual, and against one another.</summary>
[Source("common-practice", "usual locked-rotor currents and torques")]
internal sealed class StartingFigures() : PlateCheck("plate.starting-figures")
{
    private static readonly (double Low, double High) UsualCurrent = (2.5, 11);
    private static readonly (double Low, double High) UsualStarting = (0.3, 4.5);
    private static readonly (double Low, double High) UsualBreakdown = (1.6, 5);

    // A letter's band is 12 % wide; the printed current may be 20 % off by tolerance, which nobody reckons with on the plate itself.
    private const double LetterSlack = 0.1;

    /// <inheritdoc/>
    public override CheckResult Judge(PlateContext context)
    {
        if (!context.IsInduction || !context.Figures.AreUsable)
        {
            return NotAnInductionPlate(context);
        }

        var plate = context.Plate;
        var (current, starting, breakdown) = (plate.LockedRotorCurrent?.Value.Value, plate.LockedRotorTorque?.Value.Value, plate.BreakdownTorque?.Value.Value);
        return Interchanged(current, starting)
            ?? Unusual("locked-rotor current", "motor.plate.locked-rotor-current", current, UsualCurrent, AsAmperes(context, current))
            ?? Unusual("locked-rotor torque", "motor.plate.locked-rotor-torque", starting, UsualStarting, AsNewtonMetres(context, starting, UsualStarting))
            ?? Unusual("breakdown torque", "motor.plate.breakdown-torque", breakdown, UsualBreakdown, AsNewtonMetres(context, breakdown, UsualBreakdown))
            ?? Torques(context, starting, breakdown)
            ?? Letter(context, current)
            ?? Fine((current ?? starting ?? breakdown) is null && plate.CodeLetter is null ? "none printed" : "the figures of starting are usual");
    }

    private CheckResult.Violated? Interchanged(double? current, double? starting) =>
        current is { } low && starting is { } high && IsIn(UsualStarting, low) && !IsIn(UsualCurrent, low) && IsIn(UsualCurrent, high) && !IsIn(UsualStarting, high)
            ? Finding("Starting current and starting torque interchanged", $"{Said.Number(low)} times rated as locked-rotor current and {Said.Number(high)} as locked-rotor torque are usual only the other way round.", "Exchange motor.plate.locked-rotor-current and motor.plate.locked-rotor-torque.", low, UsualCurrent.Low)
            : null;

    private CheckResult.Violated? Unusual(string what, string key, double? value, (double Low, double High) usual, string? meant)
    {
        if (value is not { } ratio || IsIn(usual, ratio))
        {
            return null;
        }

        var point = IsIn(usual, ratio / 10) ? $"{Said.Number(ratio / 10)} with a decimal point lost"
            : IsIn(usual, ratio / 100) ? $"{Said.Number(ratio / 100)}, put down in per cent"
            : IsIn(usual, ratio * 10) ? $"{Said.Number(ratio * 10)} with a decimal point too many"
            : null;
        var perhaps = string.Join(", or ", new[] { point, meant }.OfType<string>());
        return Finding(
            $"Unusual {what}",
            $"A {what} of {Said.Number(ratio)} times rated is unusual; {Said.Number(usual.Low)} to {Said.Number(usual.High)} is what cage motors have.{(perhaps.Length == 0 ? string.Empty : $" Most likely it is {perhaps}.")}",
            $"Read it again; {key} is a multiple of the rated value. What cannot be is left out of the motor's circuit and bands.",
            ratio,
            ratio < usual.Low ? usual.Low : usual.High);
    }

    /// <summary>Only high-slip designs start with their largest torque.</summary>
    private CheckResult.Violated? Torques(PlateContext context, double? starting, double? breakdown) =>
        starting > breakdown * 1.02 && !string.Equals(context.Plate.DesignLetter?.Value.Trim(), "D", StringComparison.OrdinalIgnoreCase)
            ? Finding("Starting torque above breakdown torque", $"A motor that starts with {Said.Number(starting!.Value)} times its rated torque breaks down at no less, and {Said.Number(breakdown!.Value)} is put down: the two were probably interchanged.", "Read motor.plate.locked-rotor-torque and motor.plate.breakdown-torque again.", starting.Value, breakdown.Value)
            : null;

    private CheckResult.Violated? Letter(PlateContext context, double? current)
    {
        if (current is not { } ratio || context.Plate.CodeLetter?.Value is not { Length: 1 } letter || CodeLetter.Of(letter[0]) is not { Below: { } below } code)
        {
            return null;
        }

        var figures = context.Figures;
        var kilovoltAmperes = Math.Sqrt(3) * figures.Voltage_V * figures.Current_A * ratio / 1000 / (figures.Output_W / PlateFigures.WattsPerHorsepower);
        if (kilovoltAmperes >= code.Low * (1 - LetterSlack) && kilovoltAmperes <= below * (1 + LetterSlack))
        {
            return null;
        }

        return new(Id, Severity.Note, Blocks, new Basis.Standard("NEC table 430.7(B)", false))
        {
            Title = "Code letter and starting current do not go together",
            Explanation = $"{Said.Number(ratio)} times rated current is {Said.Number(kilovoltAmperes)} kVA/hp, code letter {CodeLetter.Holding(kilovoltAmperes).Letter}; letter {code.Letter} is {Said.Number(code.Low)} to {Said.Number(below)} kVA/hp.",
            Remedy = "Read both again; while both stand, the current is believed.",
            Value = kilovoltAmperes,
            Limit = kilovoltAmperes < code.Low ? code.Low : below,
            Unit = "kVA/hp",
        };
    }

    private static string? AsAmperes(PlateContext context, double? value) => value is { } amperes && amperes > UsualCurrent.High && IsIn((3.5, 10), amperes / context.Figures.Current_A)
        ? $"{Said.Number(amperes / context.Figures.Current_A)}: {Said.Number(amperes)} A over the rated {Said.Number(context.Figures.Current_A)} A"
        : null;

    private static string? AsNewtonMetres(PlateContext context, double? value, (double Low, double High) usual)
    {
        var rated = context.Figures.Output_W / AngularSpeed(context);
        return value > usual.High && IsIn((1, usual.High), value.Value / rated) ? $"{Said.Number(value.Value / rated)}: {Said.Number(value.Value)} N·m over the rated {Said.Number(rated)} N·m" : null;
    }

    private static double AngularSpeed(PlateContext context) => ShaftSpeed.FromRpm(context.Figures.Speed_rpm).RadiansPerSecond;

    private static bool IsIn((double Low, double High) range, double value) => value >= range.Low && value <= range.High;

    private CheckResult.Violated Finding(string title, string explanation, string remedy, double value, double limit) =>
        new(Id, Severity.Caution, Blocks, new Basis.CommonPractice("locked-rotor current and torques of cage motors, IEC 60034-12 and NEMA MG 1 designs"))
        {
            Title = title,
            Explanation = explanation,
            Remedy = remedy,
            Value = value,
            Limit = limit,
            Unit = "1",
        };
}
