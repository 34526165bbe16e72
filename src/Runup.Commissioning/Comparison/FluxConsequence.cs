using Runup.Commissioning.Checks;
using Runup.Engineering;
using Runup.Settings;

namespace Runup.Commissioning.Comparison;

/// <summary>Voltage over frequency against the plate's.</summary>
/// <remarks>φ/φ_N = (U/f_b)/(U_N/f_N); breakdown torque goes with its square. Validity: below base frequency, without boost.</remarks>
[Source("common-practice", "flux of a motor goes with voltage over frequency")]
internal static class FluxConsequence
{
    // The voltage range of IEC 60034-1 zone A and a little: less is a tap of the supply.
    private const double Ordinary = 0.1;

    internal static string? Of(SettingSet held, JobContext context)
    {
        if (context.Meant.Nameplate is not { } plate || held.Number(Setting.BaseFrequency) is not ({ } corner_Hz and > 0) || held.Number(Setting.MaximumOutputVoltage) is not { } most_V)
        {
            return null;
        }

        var flux = most_V / corner_Hz / (plate.Voltage.Volts / plate.Frequency.Hertz);
        return flux switch
        {
            > 1 + Ordinary => $"{Said.Percent(flux)} of the plate's flux: the motor takes much more current without load and grows hot",
            < 1 - Ordinary => $"{Said.Percent(flux)} of the plate's flux: of the breakdown torque {Said.Percent(flux * flux)} is left",
            _ => null,
        };
    }
}
