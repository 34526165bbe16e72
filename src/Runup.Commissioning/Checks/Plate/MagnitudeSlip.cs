namespace Runup.Commissioning.Checks.Plate;

/// <summary>Slips of the pen that leave the plate's figures in disagreement by a factor of their own.</summary>
internal enum MagnitudeSlip
{
    /// <summary>A number of horsepower stands with the unit kW.</summary>
    HorsepowerAsKilowatts,

    /// <summary>A number of kilowatts stands with the unit hp.</summary>
    KilowattsAsHorsepower,

    /// <summary>Watts as kilowatts, or the like: a thousand times too much.</summary>
    ThousandTooMuch,

    /// <summary>A thousand times too little.</summary>
    ThousandTooLittle,

    /// <summary>Voltage times current is √3 too small: phase current, or a value of the other connection.</summary>
    RootThreeTooLow,

    /// <summary>Voltage times current is √3 too large.</summary>
    RootThreeTooHigh,

    /// <summary>Voltage times current is half: values of two columns of a plate for two voltages one to two.</summary>
    Halved,

    /// <summary>Voltage times current is double.</summary>
    Doubled,

    /// <summary>The current is that at service factor.</summary>
    ServiceFactorCurrent,

    /// <summary>A decimal point slipped: output over apparent power ten times too much.</summary>
    TenTooMuch,

    /// <summary>Ten times too little.</summary>
    TenTooLittle,
}
