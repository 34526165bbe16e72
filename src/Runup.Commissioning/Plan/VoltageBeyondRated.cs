using Runup.Commissioning.Survey;

namespace Runup.Commissioning.Plan;

/// <summary>The technique of running a winding above its rated voltage and frequency at rated flux, as 230 V delta from 400 V to 87 Hz.</summary>
internal static class VoltageBeyondRated
{
    private const double Least = 1.4;
    private const double Around = 0.14;

    /// <summary>Whether it is meant: supply voltage and highest frequency are both at least 1.4 times the rated ones, and by about as much.</summary>
    internal static bool IsMeant(double rated_V, double rated_Hz, SupplySurvey? supply, OperationSurvey? operation)
    {
        if (supply is null || operation is null)
        {
            return false;
        }

        var voltages = supply.Voltage.Value.Volts / rated_V;
        var frequencies = operation.MaximumFrequency.Value.Hertz / rated_Hz;
        return voltages >= Least && frequencies >= Least && Math.Abs(Math.Log(voltages / frequencies)) < Around;
    }
}
