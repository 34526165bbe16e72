using Runup.Engineering;

namespace Runup.Commissioning.Checks.Motor;

/// <summary>The inertia put down for the motor against what rotors of its output and poles have: a unit mistaken is a hundred or ten thousand times off.</summary>
[Source("common-practice", "inertia of usual rotors by output and poles")]
internal sealed class StatedInertia() : Check("motor.inertia", Stage.Coupled)
{
    // Usual rotors lie within a factor of two; flat or slender ones of special motors within some four.
    private const double Far = 10;
    private const double SquareCentimetres = 1e4;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (context.Job.Motor.Inertia?.Value.KilogramSquareMetres is not { } stated)
        {
            return Fine("none is put down; the usual one counts");
        }

        if (context.Meant.Nameplate is not { } plate)
        {
            return Unknown(JobCheck.NoCircuit(context), "whether the motor's inertia is one of such a motor");
        }

        var usual = RotorInertia.Usual(plate).KilogramSquareMetres;
        var ratio = stated / usual;
        if (ratio is >= 1 / Far and <= Far)
        {
            return Fine($"{Said.Number(stated)} kg·m², {Said.Number(ratio)} times the usual");
        }

        return new CheckResult.Violated(Id, Severity.Caution, Blocks, new Basis.CommonPractice("rotors of cage motors have 0.0038 kg·m² · (P/kW)^1.2 · (poles/4)^1.5 within a factor of two"))
        {
            Title = ratio > 1 ? "More inertia than such a motor has" : "Less inertia than such a motor has",
            Explanation = $"{Said.Number(stated)} kg·m² is put down, and a rotor of this output and these poles has about {Said.Number(usual)} kg·m².{Perhaps(ratio)} Ramps, braking and rehearsal reckon with what is put down.",
            Remedy = "Read motor.inertia again with its unit; without it the usual one is taken.",
            Value = stated,
            Limit = ratio > 1 ? Far * usual : usual / Far,
            Unit = "kg·m²",
        };
    }

    private static string Perhaps(double ratio) => ratio / SquareCentimetres is >= 0.25 and <= 4 ? " Most likely it is in kg·cm²." : string.Empty;
}
