using Runup.Commissioning.Diagnosis;
using Runup.Commissioning.Survey;
using Runup.Commissioning.Tests.Checks;
using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Diagnosis;

public sealed class MotorReadingsTests
{
    private static Nameplate Plate { get; } = new()
    {
        Output = ShaftPower.FromWatts(7500),
        Voltage = LineVoltage.FromVolts(400),
        Current = LineCurrent.FromAmperes(14.4),
        Frequency = ElectricalFrequency.FromHertz(50),
        Speed = ShaftSpeed.FromRpm(1460),
        PrintedPoles = PoleCount.FromPoles(4),
        PowerFactor = PowerFactor.FromRatio(0.83),
        Efficiency = Efficiency.FromRatio(0.904),
    };

    private static MotorSurvey Motor(MotorMeasurements? measured = null, double? inertia = null) => Jobs.Pump().Motor with
    {
        Measured = measured ?? new(),
        Inertia = inertia is { } value ? new Datum<Inertia>(Inertia.FromKilogramSquareMetres(value)) : null,
    };

    private static ReadingRow Row(double? hertz = null, double? amperes = null, bool? coupled = null, double? rpm = null, double? volts = null) => new()
    {
        Line = 2,
        Frequency = hertz is { } f ? ElectricalFrequency.FromHertz(f) : null,
        Current = amperes is { } i ? LineCurrent.FromAmperes(i) : null,
        Speed = rpm is { } n ? ShaftSpeed.FromRpm(n) : null,
        OutputVoltage = volts is { } u ? LineVoltage.FromVolts(u) : null,
        Coupled = coupled,
    };

    private static MotorReadings Of(params ReadingRow[] rows) => MotorReadings.Of(Motor(), Plate, rows);

    [Fact]
    public void What_was_surveyed_as_measured_is_read()
    {
        var readings = MotorReadings.Of(
            Motor(new MotorMeasurements
            {
                WindingResistance = new(Resistance.FromOhms(0.98)),
                WindingTemperature = new(Temperature.FromCelsius(21)),
                NoLoadCurrent = new(LineCurrent.FromAmperes(6.4)),
                StatorResistance = new(Resistance.FromOhms(0.48)),
                LeakageInductance = new(Inductance.FromHenries(6.6e-3)),
                MagnetizingCurrent = new(LineCurrent.FromAmperes(6.2)),
            }),
            Plate,
            []);
        readings.Used.Select(reading => reading.GetType().Name).ShouldBe(["WindingResistance", "NoLoadCurrent", "WindingResistance", "TunedLeakage", "TunedMagnetizingCurrent"]);
        readings.Used.OfType<InstrumentReading.WindingResistance>().Last().Resistance.Ohms.ShouldBe(0.96, 1e-12);
        readings.Taken.Count.ShouldBe(3);
    }

    [Fact]
    public void An_uncoupled_current_without_voltage_stands_on_the_straight_line()
    {
        var reading = (InstrumentReading.NoLoadCurrent)Of(Row(10, 6.3, coupled: false)).Used.Single();
        reading.Voltage.Volts.ShouldBe(80, 1e-9);
        Of(Row(10, 6.3, coupled: false)).Assumptions.ShouldContain(assumption => assumption.What.StartsWith("output voltage"));
        ((InstrumentReading.NoLoadCurrent)Of(Row(10, 6.3, coupled: false, volts: 91)).Used.Single()).Voltage.Volts.ShouldBe(91);
    }

    [Fact]
    public void A_current_under_load_needs_its_speed()
    {
        Of(Row(50, 11, coupled: true, rpm: 1473)).Used.Single().ShouldBeOfType<InstrumentReading.LoadedCurrent>().Speed.Rpm.ShouldBe(1473, 1e-9);
        Of(Row(50, 11, coupled: true)).NotUsed.Single().ShouldBe("line 2: a current under load needs the speed or the torque beside it");
        Of(Row(50, 11)).NotUsed.Single().ShouldBe("line 2: it does not say whether the machine was coupled");
        Of(Row(null, 11, coupled: false)).NotUsed.Single().ShouldContain("output frequency");
    }

    [Fact]
    public void Many_readings_of_one_instrument_share_its_error()
    {
        var readings = Of(Row(10, 6.3, coupled: false), Row(20, 6.3, coupled: false), Row(30, 6.3, coupled: false), Row(40, 6.3, coupled: false));
        readings.Used.ShouldAllBe(reading => Math.Abs(reading.Error.Percent - 4) < 1e-9);
    }

    [Fact]
    public void A_coast_down_tells_the_friction_when_the_inertia_is_known()
    {
        // With P_f = 100 W at 1460 rpm and J = 0.035: arctan(ω/ω_N) falls by P_f/(2 J ω_N²) a second.
        var rated = 1460 * Math.PI / 30;
        var rate = 100 / (2 * 0.035 * rated * rated);
        var rows = Enumerable.Range(0, 8).Select(i => new ReadingRow
        {
            Line = i + 2,
            State = "coasting",
            Time = Duration.FromSeconds(i),
            Speed = ShaftSpeed.FromRadiansPerSecond(rated * Math.Tan(0.78 - (rate * i))),
        }).ToList();
        MotorReadings.Of(Motor(inertia: 0.035), Plate, rows).Used.Single().ShouldBeOfType<InstrumentReading.CoastDown>().Rate.ShouldBe(rate, 1e-9);
        MotorReadings.Of(Motor(), Plate, rows).NotUsed.Single().ShouldContain("motor.inertia");
    }

    [Fact]
    public void The_band_before_stands_beside_the_one_after()
    {
        var known = KnownMotor.Of(Motor(), Plate, rows: [Row(50, 6.2, coupled: false)]).ShouldNotBeNull();
        known.HasReadings.ShouldBeTrue();
        static Band<double> NoLoad(MotorEnsemble ensemble) => MotorBands.Of(ensemble).NoLoadCurrent.As(current => current.Amperes);
        NoLoad(known.Now).HalfWidth().ShouldBeLessThan(0.5 * NoLoad(known.FromPlate).HalfWidth());
    }

    [Fact]
    public void Without_readings_nothing_changes()
    {
        var known = KnownMotor.Of(Motor(), Plate).ShouldNotBeNull();
        known.HasReadings.ShouldBeFalse();
        known.Now.ShouldBeSameAs(known.FromPlate);
    }
}
