using Runup.Commissioning.Checks.Plate;
using Runup.Commissioning.Survey;

namespace Runup.Commissioning.Checks;

/// <summary>A motor's plate with what is known of its supply, and what follows from plate arithmetic alone, computed once.</summary>
public sealed class PlateContext
{
    private readonly Lazy<LikelySlips> likely;

    private PlateContext(MotorSurvey motor, SupplySurvey? supply, OperationSurvey? operation)
    {
        (Motor, Supply, Operation) = (motor, supply, operation);
        Figures = PlateFigures.Of(motor.Plate);
        Speed = SpeedReading.Of(this);
        likely = new(() => LikelySlips.Of(this));
        Magnitudes = MagnitudeReading.Of(this);
    }

    /// <summary>The motor as surveyed.</summary>
    public MotorSurvey Motor { get; }

    /// <summary>The supply, where it is known.</summary>
    public SupplySurvey? Supply { get; }

    /// <summary>How it is to run, where it is known.</summary>
    public OperationSurvey? Operation { get; }

    /// <summary>The plate.</summary>
    public PlateSurvey Plate => Motor.Plate;

    /// <summary>The plate's figures as plain numbers.</summary>
    internal PlateFigures Figures { get; }

    /// <summary>How frequency, speed and poles go together.</summary>
    internal SpeedReading Speed { get; }

    /// <summary>How output, voltage, current, power factor and efficiency go together.</summary>
    internal MagnitudeReading Magnitudes { get; }

    /// <summary>What may have been put down wrongly, where the figures disagree; reckoned only when it is asked for.</summary>
    internal LikelySlips Likely => likely.Value;

    /// <summary>Whether the plate's arithmetic is that of an induction motor.</summary>
    internal bool IsInduction => Motor.Kind.Value == MotorKind.Induction;

    /// <summary>Whether the motor turns in step with the frequency, without slip.</summary>
    internal bool IsSynchronous => Motor.Kind.Value is MotorKind.PermanentMagnet or MotorKind.SynchronousReluctance;

    /// <summary>A motor alone.</summary>
    public static PlateContext For(MotorSurvey motor) => new(motor, null, null);

    /// <summary>The motor of a job.</summary>
    public static PlateContext For(Job job) => new(job.Motor, job.Supply, job.Operation);
}
