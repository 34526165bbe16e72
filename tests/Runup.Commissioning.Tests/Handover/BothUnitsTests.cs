using Runup.Commissioning.Handover;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Handover;

/// <summary>Factors: NIST SP 811, appendix B; the horsepower is that of 550 ft·lbf/s.</summary>
public sealed class BothUnitsTests
{
    [Fact]
    public void Power_stands_in_both() => BothUnits.Write(ShaftPower.FromWatts(7500)).ShouldBe("7.5 kW (10.1 hp)");

    [Fact]
    public void Torque_stands_in_both() => BothUnits.Write(Torque.FromNewtonMetres(49.05)).ShouldBe("49.05 N·m (36.2 lb·ft)");

    [Fact]
    public void Inertia_stands_in_both() => BothUnits.Write(Inertia.FromKilogramSquareMetres(0.12)).ShouldBe("0.12 kg·m² (2.85 lb·ft²)");

    [Fact]
    public void Temperature_stands_in_both() => BothUnits.Write(Temperature.FromSi(313.15)).ShouldBe("40 °C (104 °F)");

    [Fact]
    public void What_all_write_alike_stands_once() => BothUnits.Write(ElectricalFrequency.FromHertz(50)).ShouldBe("50 Hz");
}
