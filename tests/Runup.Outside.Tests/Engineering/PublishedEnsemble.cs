using System.Globalization;
using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;
using Runup.Engineering.Standards;
using Runup.Quantities;

namespace Runup.Outside.Tests.Engineering;

/// <summary>What is known of a published motor beside output, voltage, current, speed, power factor and efficiency.</summary>
public enum Knowledge
{
    /// <summary>Nothing more.</summary>
    Plate,

    /// <summary>The locked-rotor current.</summary>
    LockedRotorCurrent,

    /// <summary>The code letter.</summary>
    CodeLetter,

    /// <summary>One reading of the no-load current, with 2 % instrument error.</summary>
    NoLoadReading,
}

/// <summary>The bands of a published motor from its plate alone, and the published circuit's own values.</summary>
internal sealed record PublishedEnsemble(
    string Id,
    Nameplate Plate,
    MotorEnsemble Ensemble,
    MotorBands Bands,
    IReadOnlyList<(string Quantity, Band<double> Band, double Published)> Pairs)
{
    /// <summary>All of grade A to C, and the published operating points.</summary>
    internal static IReadOnlyList<string> Ids { get; } =
        [.. PublishedMotors.Check.Rows.Keys.Where(id => PublishedMotors.Check.Text(id, "grade") != "D")];

    /// <summary>Grade D, which are printed and not counted.</summary>
    internal static IReadOnlyList<string> OutsideTheCount { get; } =
        [.. PublishedMotors.Check.Rows.Keys.Where(id => PublishedMotors.Check.Text(id, "grade") == "D")];

    internal IEnumerable<string> Misses => Pairs.Where(pair => !pair.Band.Holds(pair.Published)).Select(pair => pair.Quantity);

    internal double NoLoadHalfWidth => Pairs[0].Band.HalfWidth();

    internal static PublishedEnsemble Of(string id, Knowledge knowledge, PlateTrust trust, ulong seed = 20)
    {
        var plate = PlateOf(id);
        var check = PublishedMotors.Check;
        var (noLoad, lockedRotor, breakdown) = (check.Number(id, "I_noload")!.Value, check.Number(id, "I_lockedrotor")!.Value, check.Number(id, "T_breakdown")!.Value);
        plate = knowledge switch
        {
            Knowledge.LockedRotorCurrent => plate with { LockedRotorCurrentRatio = lockedRotor / plate.Current.Amperes },
            Knowledge.CodeLetter => plate with
            {
                CodeLetter = CodeLetter.Holding(Math.Sqrt(3) * plate.Voltage.Volts * lockedRotor / 1000 / (plate.Output.Watts / 745.69987)).Letter,
            },
            _ => plate,
        };
        var ensemble = MotorEnsemble.Of(plate, trust, seed: seed).ShouldNotBeNull();
        if (knowledge == Knowledge.NoLoadReading)
        {
            ensemble = ensemble.After(
                [new InstrumentReading.NoLoadCurrent(LineCurrent.FromAmperes(noLoad), plate.Voltage, plate.Frequency, Fraction.FromRatio(0.02))]);
        }

        var bands = MotorBands.Of(ensemble);
        return new PublishedEnsemble(id, plate, ensemble, bands,
        [
            ("no-load current", bands.NoLoadCurrent.As(current => current.Amperes), noLoad),
            ("locked-rotor current", bands.LockedRotorCurrentRatio.As(ratio => ratio.Value * plate.Current.Amperes), lockedRotor),
            ("breakdown torque", bands.BreakdownTorqueRatio.As(ratio => ratio.Value * plate.RatedTorque.NewtonMetres), breakdown),
        ]);
    }

    /// <summary>
    /// The plate as printed. A value that is not published is taken from the circuit solved at rated power (<c>motors-check.csv</c>), to that table's digits;
    /// an operating point has its own slip.
    /// </summary>
    private static Nameplate PlateOf(string id)
    {
        var (motors, check) = (PublishedMotors.Motors, PublishedMotors.Check);
        var at = check.Text(id, "kind") == "op" ? "at_n" : "at_P";
        (double Value, double HalfDigit) Printed(string published, string solved, double scale = 1) => motors.Number(id, published) is { } value
            ? (value / scale, motors.HalfDigit(id, published) / scale)
            : (check.Number(id, solved)!.Value, check.HalfDigit(id, solved));
        var current = Printed("rated_current_A", $"I_{at}");
        var powerFactor = Printed("power_factor", $"pf_{at}");
        var efficiency = Printed("efficiency_pct", $"eff_{at}", 100);
        var speed = Printed("rated_speed_rpm", "n_at_P");
        var output = check.Text(id, "kind") == "op" ? check.Number(id, "Pout_at_n_W")!.Value : motors.Number(id, "rated_output_kW")!.Value * 1000;
        return new Nameplate
        {
            Output = ShaftPower.FromWatts(output),
            Voltage = LineVoltage.FromVolts(motors.Number(id, "voltage_V_line")!.Value),
            Current = LineCurrent.FromAmperes(current.Value),
            Frequency = ElectricalFrequency.FromHertz(motors.Number(id, "frequency_Hz")!.Value),
            Speed = ShaftSpeed.FromRpm(speed.Value),
            PrintedPoles = PoleCount.FromPoles(int.Parse(motors.Text(id, "poles"), CultureInfo.InvariantCulture)),
            PowerFactor = PowerFactor.FromRatio(powerFactor.Value),
            Efficiency = Efficiency.FromRatio(efficiency.Value),
            Rounding = new PlateRounding
            {
                CurrentAmperes = current.HalfDigit,
                PowerFactor = powerFactor.HalfDigit,
                Efficiency = efficiency.HalfDigit,
                SpeedRadiansPerSecond = speed.HalfDigit * Math.PI / 30,
            },
        };
    }
}
