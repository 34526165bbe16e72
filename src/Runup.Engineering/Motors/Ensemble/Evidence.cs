namespace Runup.Engineering.Motors.Ensemble;

/// <summary>Something known of a motor beside its rated point, that speaks for some members and against others.</summary>
internal interface IEvidence
{
    /// <summary>Logarithm of the likelihood of what is known if the motor were this member; the density is that of the relative error.</summary>
    double LogLikelihood(in MotorMember member);
}

/// <summary>A figure of a member.</summary>
internal delegate double MemberFigure(in MotorMember member);

/// <summary>A figure of the plate, with the errors that it may have below and above: two halves of a normal distribution, joined at the known figure.</summary>
/// <param name="of">The figure as a member has it.</param>
/// <param name="printed">As known.</param>
/// <param name="below">Standard deviation of the motor's own figure below the known one, relative.</param>
/// <param name="above">Likewise above.</param>
internal sealed class FigureEvidence(MemberFigure of, double printed, double below, double above) : IEvidence
{
    public double LogLikelihood(in MotorMember member)
    {
        var off = Math.Log(of(member) / printed);
        var deviation = off < 0 ? below : above;
        return (-0.5 * off * off / (deviation * deviation)) - Math.Log((below + above) / 2);
    }
}

/// <summary>A figure known to lie between two ends, with soft edges.</summary>
/// <param name="of">The figure as a member has it.</param>
/// <param name="low">Lower end.</param>
/// <param name="high">Upper end.</param>
/// <param name="edge">Standard deviation beyond an end, relative.</param>
internal sealed class BandEvidence(MemberFigure of, double low, double high, double edge) : IEvidence
{
    public double LogLikelihood(in MotorMember member)
    {
        var figure = of(member);
        var off = figure < low ? Math.Log(figure / low) : figure > high ? Math.Log(figure / high) : 0;
        return (-0.5 * off * off / (edge * edge)) - Math.Log(Math.Log(high / low) + (2.5 * edge));
    }
}

/// <summary>A figure that an instrument showed.</summary>
/// <remarks>
/// Normal in the relative error, and in one of fifty cases ten times as wide: a reading taken wrongly. So one odd reading neither kills every member nor passes
/// for a good one.
/// </remarks>
/// <param name="of">What the instrument would show on a member, and the standard deviation of that, relative.</param>
/// <param name="shown">What it showed.</param>
internal sealed class ReadingEvidence(MemberReading of, double shown) : IEvidence
{
    private const double WrongShare = 0.02;
    private const double WrongWidth = 10;

    public double LogLikelihood(in MotorMember member)
    {
        var (figure, deviation) = of(member);
        return Of(shown, figure, deviation);
    }

    /// <summary>The likelihood of a reading for a figure that is expected, with its standard deviation.</summary>
    internal static double Of(double shown, double figure, double deviation)
    {
        var off = figure > 0 ? Math.Log(shown / figure) / deviation : 1e3;
        var sound = -0.5 * off * off;
        var wrong = sound / (WrongWidth * WrongWidth);
        var wide = wrong + Math.Log(WrongShare / WrongWidth);
        return wide + Math.Log(1 + (Math.Exp(Math.Min(600, sound - wide)) * (1 - WrongShare))) - Math.Log(deviation);
    }
}

/// <summary>What an instrument would show on a member, with its standard deviation, relative.</summary>
internal delegate (double Figure, double Deviation) MemberReading(in MotorMember member);
