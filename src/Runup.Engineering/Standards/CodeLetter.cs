using Runup.Quantities;

namespace Runup.Engineering.Standards;

/// <summary>Code letters for the locked-rotor apparent power of a motor per horsepower.</summary>
/// <remarks>
/// The printed bands (3.15 to 3.54, 3.55 to 3.99, ...) are read as half-open: from a band's lower figure up to, not including, the next one's.
/// </remarks>
/// <param name="Letter">The letter.</param>
/// <param name="Low">Lowest locked-rotor kVA per horsepower.</param>
/// <param name="Below">First locked-rotor kVA per horsepower beyond the band; null for the last letter, which is open.</param>
[Source("nec", "Table 430.7(B)")]
public sealed record CodeLetter(char Letter, double Low, double? Below)
{
    private const double WattsPerHorsepower = 745.69987158227;

    private static readonly Lazy<IReadOnlyList<CodeLetter>> AllLetters = new(Read);

    /// <summary>All letters, ascending.</summary>
    public static IReadOnlyList<CodeLetter> All => AllLetters.Value;

    /// <summary>The letter's band; null for a letter that the table does not use.</summary>
    public static CodeLetter? Of(char letter) => All.FirstOrDefault(code => code.Letter == char.ToUpperInvariant(letter));

    /// <summary>The letter of a locked-rotor kVA per horsepower.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The figure is negative or not a number.</exception>
    public static CodeLetter Holding(double kilovoltAmperesPerHorsepower) => kilovoltAmperesPerHorsepower >= 0
        ? All.Last(code => kilovoltAmperesPerHorsepower >= code.Low)
        : throw new ArgumentOutOfRangeException(nameof(kilovoltAmperesPerHorsepower), kilovoltAmperesPerHorsepower, "An apparent power per horsepower is not negative.");

    /// <summary>Locked-rotor current at a kVA per horsepower: I = (kVA/hp) · hp · 1000 / (√3 U).</summary>
    public static LineCurrent LockedRotorCurrent(double kilovoltAmperesPerHorsepower, ShaftPower output, LineVoltage voltage) =>
        LineCurrent.FromAmperes(kilovoltAmperesPerHorsepower * 1000 * (output.Watts / WattsPerHorsepower) / (Math.Sqrt(3) * voltage.Volts));

    /// <summary>The lowest and the highest locked-rotor current that the letter allows; the highest is null for the last letter.</summary>
    public (LineCurrent Lowest, LineCurrent? Highest) LockedRotorCurrents(ShaftPower output, LineVoltage voltage) =>
        (LockedRotorCurrent(Low, output, voltage), Below is { } below ? LockedRotorCurrent(below, output, voltage) : null);

    private static List<CodeLetter> Read()
    {
        var table = StandardTable.Read("nec-430-7b");
        var letters = table.Rows.Select(row => (Letter: table.Text(row, "letter")[0], Low: table.Number(row, "kVA_per_hp_min") ?? 0)).ToList();
        return letters.Select((letter, place) =>
            new CodeLetter(letter.Letter, letter.Low, place + 1 < letters.Count ? letters[place + 1].Low : null)).ToList();
    }
}
