using Runup.Commissioning.Survey;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>The plate's figures as plain numbers in SI, usable only where they are those of something that turns.</summary>
internal sealed record PlateFigures
{
    internal const double WattsPerHorsepower = 745.69987158227022;

    /// <summary>The metric horsepower, PS: 75 kgf·m/s.</summary>
    internal const double WattsPerMetricHorsepower = 735.49875;

    internal required double Output_W { get; init; }

    internal required double Voltage_V { get; init; }

    internal required double Current_A { get; init; }

    internal required double Frequency_Hz { get; init; }

    internal required double Speed_rpm { get; init; }

    internal int? PrintedPoles { get; init; }

    internal double? PowerFactor { get; init; }

    internal double? Efficiency { get; init; }

    /// <summary>Whether arithmetic with these figures means anything.</summary>
    internal bool AreUsable => IsUsable(Output_W) && IsUsable(Voltage_V) && IsUsable(Current_A) && IsUsable(Frequency_Hz) && IsUsable(Speed_rpm);

    /// <summary>η·cos φ as output, voltage and current imply it: P / (√3·U·I).</summary>
    internal double ImpliedProduct => Output_W / (Math.Sqrt(3) * Voltage_V * Current_A);

    /// <summary>η·cos φ as printed, or null where one of the two is not.</summary>
    internal double? PrintedProduct => IsUsable(PowerFactor) && IsUsable(Efficiency) ? PowerFactor * Efficiency : null;

    /// <summary>Even and at least two poles, as printed; else null.</summary>
    internal int? BuildablePoles => PrintedPoles is { } poles && poles >= 2 && poles % 2 == 0 && poles <= 1000 ? poles : null;

    internal static PlateFigures Of(PlateSurvey plate) => new()
    {
        Output_W = plate.Output.Value.Watts,
        Voltage_V = plate.Voltage.Value.Volts,
        Current_A = plate.Current.Value.Amperes,
        Frequency_Hz = plate.Frequency.Value.Hertz,
        Speed_rpm = plate.Speed.Value.Rpm,
        PrintedPoles = plate.Poles?.Value,
        PowerFactor = plate.PowerFactor?.Value.Ratio,
        Efficiency = plate.Efficiency?.Value.Ratio,
    };

    /// <summary>Synchronous speed in rpm: 120·f/p.</summary>
    internal static double Synchronous_rpm(double frequency_Hz, int poles) => 120 * frequency_Hz / poles;

    /// <summary>The largest even pole number whose synchronous speed is not below the speed: p = 2·⌊60·f/n⌋.</summary>
    internal int PolesFromSpeed(double frequency_Hz) => 2 * (int)Math.Clamp(Math.Floor(60 * frequency_Hz / Speed_rpm * (1 + 1e-9)), 1, 500);

    /// <summary>Slip at a frequency and pole number: 1 − n·p/(120·f).</summary>
    internal double SlipAt(double frequency_Hz, int poles) => 1 - (Speed_rpm / Synchronous_rpm(frequency_Hz, poles));

    // Far outside of what is built, and far inside of what arithmetic overflows at.
    private static bool IsUsable(double? value) => value is > 1e-4 and < 1e9;
}
