using Runup.Quantities;

namespace Runup.Engineering.Motors.Ensemble;

/// <summary>Something read on a motor, with how far the instrument may be wrong.</summary>
/// <remarks>
/// The error stated of an instrument is taken as one standard deviation; what the circuit leaves out comes on top (0.3 % where the plate is exact, else 1 %).
/// A clamp meter that averages, and most that do not filter, read falsely on a drive's output below some 20 Hz: the drive's own display is better there.
/// </remarks>
public abstract record InstrumentReading
{
    private InstrumentReading(Fraction error) => Error = error;

    /// <summary>Standard deviation of the instrument, relative.</summary>
    public Fraction Error { get; }

    /// <summary>The current of the uncoupled motor at a voltage and a frequency.</summary>
    public sealed record NoLoadCurrent(LineCurrent Current, LineVoltage Voltage, ElectricalFrequency Frequency, Fraction Of) : InstrumentReading(Of)
    {
        internal override double Shown => Current.Amperes;

        internal override MemberReading On(PlateTrust trust)
        {
            var (phase_V, hertz, deviation) = (Voltage.Phase.Volts, Frequency.Hertz, With(trust));
            return (in MotorMember member) => (member.Uncoupled(phase_V, hertz).Current_A, deviation);
        }
    }

    /// <summary>The current at a voltage, a frequency and a speed of the shaft.</summary>
    public sealed record LoadedCurrent(LineCurrent Current, LineVoltage Voltage, ElectricalFrequency Frequency, ShaftSpeed Speed, Fraction Of) : InstrumentReading(Of)
    {
        // About one turn a minute of 1500, as hand-held tachometers and the frequency's last digit leave it.
        private const double SlipDeviation = 7e-4;

        internal override double Shown => Current.Amperes;

        internal override MemberReading On(PlateTrust trust)
        {
            var (phase_V, hertz, speed, deviation) = (Voltage.Phase.Volts, Frequency.Hertz, Speed.RadiansPerSecond, With(trust));
            return (in MotorMember member) =>
            {
                var phases = new PhaseCircuit(member.Values, hertz);
                var slip = 1 - (speed / phases.SynchronousSpeed_radPerS);
                var current = phases.At(phase_V, slip).Current_A;
                return (current, double.Hypot(deviation, (phases.At(phase_V, slip + SlipDeviation).Current_A / current) - 1));
            };
        }
    }

    /// <summary>The current at a voltage, a frequency and a torque of the shaft, which the drive reckons.</summary>
    public sealed record TorqueCurrent(LineCurrent Current, LineVoltage Voltage, ElectricalFrequency Frequency, Torque Torque, Fraction Of) : InstrumentReading(Of)
    {
        // A drive's torque is reckoned, not measured: of rated torque.
        private const double TorqueDeviation = 0.05;

        internal override double Shown => Current.Amperes;

        internal override MemberReading On(PlateTrust trust)
        {
            var (phase_V, hertz, torque, deviation) = (Voltage.Phase.Volts, Frequency.Hertz, Math.Abs(Torque.NewtonMetres), With(trust));
            return (in MotorMember member) =>
            {
                var phases = new PhaseCircuit(member.Values, hertz);
                var current = Running.At(phases, phase_V, torque).Current_A;
                var more = Running.At(phases, phase_V, torque + (TorqueDeviation * member.RatedTorque_Nm)).Current_A;
                return (current, double.Hypot(deviation, (more / current) - 1));
            };
        }
    }

    /// <summary>The resistance between two terminals, in star or in delta twice that of the star equivalent's phase.</summary>
    /// <remarks>R = 2 Rs (235 + θ)/(235 + θ_warm), θ temperature of the copper in °C, at measurement and at rated load (75 °C ± 15 K assumed).</remarks>
    /// <param name="Resistance">As read.</param>
    /// <param name="Winding">Temperature of the winding; null: that of a cold motor, 25 °C ± 10 K.</param>
    /// <param name="Of">Error of the instrument.</param>
    [Source("iec-60034-1", "resistance method, copper: 235")]
    public sealed record WindingResistance(Resistance Resistance, Temperature? Winding, Fraction Of) : InstrumentReading(Of)
    {
        private const double Copper_C = 235;
        private const double Cold_C = 25;

        internal override double Shown => Resistance.Ohms;

        internal override MemberReading On(PlateTrust trust)
        {
            var celsius = Winding?.Celsius ?? Cold_C;
            var deviation = double.Hypot(With(trust), (Winding is null ? 10 : 2) / (Copper_C + celsius));
            return (in MotorMember member) => (2 * member.Values.Stator_ohm * (Copper_C + celsius) / (Copper_C + member.Warm_C), deviation);
        }
    }

    /// <summary>Leakage of stator and rotor together, per phase of the star equivalent, as a drive's tuning at standstill finds it.</summary>
    /// <remarks>Tuning pulses see a leakage between that at standstill and that at rated slip; the middle of both is taken, with 12 % on top of the error.</remarks>
    public sealed record TunedLeakage(Inductance Inductance, Fraction Of) : InstrumentReading(Of)
    {
        private const double Deviation = 0.12;

        internal override double Shown => Inductance.Henries;

        internal override MemberReading On(PlateTrust trust)
        {
            var deviation = double.Hypot(With(trust), Deviation);
            return (in MotorMember member) => (member.TransientLeakage_ohm / (2 * Math.PI * member.Frequency_Hz), deviation);
        }
    }

    /// <summary>The current that magnetizes the motor to rated flux, as a drive's tuning finds it; 5 % on top of the error.</summary>
    public sealed record TunedMagnetizingCurrent(LineCurrent Current, Fraction Of) : InstrumentReading(Of)
    {
        private const double Deviation = 0.05;

        internal override double Shown => Current.Amperes;

        internal override MemberReading On(PlateTrust trust)
        {
            var deviation = double.Hypot(With(trust), Deviation);
            return (in MotorMember member) => (-member.Rated.At(member.Phase_V, 0).Reactive_A, deviation);
        }
    }

    /// <summary>How quickly the uncoupled motor with a known inertia slows down, which tells its friction loss; 15 % on top of the error.</summary>
    /// <remarks>
    /// With <see cref="FrictionLaw"/>, J dω/dt = −P_f/(2 ω_N) (1 + ω²/ω_N²), so that arctan(ω/ω_N) falls evenly: by P_f/(2 J ω_N²) each second.
    /// </remarks>
    /// <param name="Rate">How much arctan(ω/ω_N) falls in a second.</param>
    /// <param name="Inertia">Of the rotor.</param>
    /// <param name="Of">Error of rate and inertia together.</param>
    public sealed record CoastDown(double Rate, Inertia Inertia, Fraction Of) : InstrumentReading(Of)
    {
        private const double Deviation = 0.15;

        internal override double Shown => 2 * Rate * Inertia.KilogramSquareMetres;

        internal override MemberReading On(PlateTrust trust)
        {
            var deviation = double.Hypot(With(trust), Deviation);
            return (in MotorMember member) => (member.Values.Friction_W / (member.Values.ReferenceSpeed_radPerS * member.Values.ReferenceSpeed_radPerS), deviation);
        }
    }

    /// <summary>What the instrument showed, in SI.</summary>
    internal abstract double Shown { get; }

    /// <summary>What it would show on a member.</summary>
    internal abstract MemberReading On(PlateTrust trust);

    internal ReadingEvidence Evidence(PlateTrust trust) => new(On(trust), Shown);

    private double With(PlateTrust trust) => double.Hypot(Math.Max(1e-4, Math.Abs(Error.Ratio)), trust == PlateTrust.Exact ? 0.003 : 0.01);
}
