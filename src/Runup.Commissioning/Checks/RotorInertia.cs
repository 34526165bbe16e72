using Runup.Engineering;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>The inertia of a rotor that nobody knows.</summary>
[Source("common-practice", "inertia of usual rotors by output and poles")]
internal static class RotorInertia
{
    /// <summary>What rotors of its output and poles have, as <see cref="Assumed"/> takes it.</summary>
    internal static Inertia Usual(Nameplate plate) =>
        Inertia.FromKilogramSquareMetres(0.0038 * Math.Pow(plate.Output.Watts / 1000, 1.2) * Math.Pow(plate.Poles.Poles / 4.0, 1.5));

    /// <summary>J = 0.0038 kg·m² · (P/kW)^1.2 · (p/4)^1.5, P output, p poles: the middle of what cage motors of 0.37 kW to 200 kW have, within a factor of two; common practice, no source.</summary>
    internal static Inertia Assumed(Nameplate? plate, List<Assumption> assumptions)
    {
        if (plate is null)
        {
            assumptions.Add(new("motor inertia", "0 kg·m²", "no usable plate to estimate it from", false));
            return default;
        }

        var inertia = Usual(plate);
        assumptions.Add(new("motor inertia (usual for output and poles, within a factor of two)", $"{Said.Number(inertia.KilogramSquareMetres)} kg·m²", Assumption.CommonPractice, false));
        return inertia;
    }
}
