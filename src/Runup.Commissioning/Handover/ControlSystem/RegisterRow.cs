using System.Globalization;
using Runup.Profiles;

namespace Runup.Commissioning.Handover.ControlSystem;

/// <summary>A value that the control system writes or reads: where it stands and how its counts are read.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Parameter">The make's number and name.</param>
/// <param name="Register">PDU address from 0 of the first register.</param>
/// <param name="Form">Bits and sign, such as <c>32 bits, signed</c>.</param>
/// <param name="CountIsWorth">What one count is worth, such as <c>0.01 Hz</c>.</param>
/// <param name="Example">A value with its counts and registers, or null.</param>
public sealed record RegisterRow(string Name, string Parameter, ushort Register, string Form, string CountIsWorth, string? Example)
{
    // The last register that five digits can name; beyond, six are usual.
    private const int LastOfFiveDigits = 9998;

    /// <summary>The register counted from 1 behind a 4, as many programs have it: 40001 is register 0; common practice, no source.</summary>
    public string Holding => (Register <= LastOfFiveDigits ? 40001 + Register : 400001 + Register).ToString(CultureInfo.InvariantCulture);

    /// <summary>The row of a parameter.</summary>
    internal static RegisterRow Of(string name, Parameter parameter, ParameterValues values, string? countIsWorth = null, string? example = null) => new(
        name,
        $"{parameter.Number} {parameter.Name}",
        parameter.Register,
        string.Create(CultureInfo.InvariantCulture, $"{parameter.Width} bits, {(parameter.Signed ? "signed" : "no sign")}"),
        countIsWorth ?? Worth(parameter, values),
        example);

    /// <summary>Counts in hex, register by register, lower address first.</summary>
    internal static string Words(Parameter parameter, long raw) => string.Join(' ', RegisterImage.Words(parameter, raw).Select(w => WordRow.Hex(w)));

    private static string Worth(Parameter parameter, ParameterValues values) => parameter.Form is ParameterForm.Numeric
        ? $"{DisplayText.Of(parameter, 1, values)} {DisplayText.Unit(parameter, values)}".TrimEnd()
        : "a choice";
}
