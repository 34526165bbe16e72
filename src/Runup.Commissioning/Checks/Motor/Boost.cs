namespace Runup.Commissioning.Checks.Motor;

/// <summary>Whether the boost that breaking away needs heats the motor at rest.</summary>
internal sealed class Boost() : Check("motor.boost", Stage.Coupled)
{
    // A loaded start may well take more than rated current for a moment; half as much again is worth a word.
    private const double Bearable = 1.5;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (context.Meant.Boost is not { } boost)
        {
            return Unknown(JobCheck.NoCircuit(context), "how much torque boost the motor needs and bears");
        }

        return boost.Boost.Ratio <= boost.Highest.Ratio * Bearable
            ? Fine($"{Said.Percent(boost.Boost.Ratio)} of rated voltage; rated current would flow at standstill with {Said.Percent(boost.Highest.Ratio)}")
            : new CheckResult.Violated(Id, Severity.Note, Blocks, new Basis.Physics("I = b·U_N/(√3·Rs) from direct voltage at standstill"))
            {
                Title = "A large boost",
                Explanation = $"Breaking away needs a boost of {Said.Percent(boost.Boost.Ratio)}; while it stands the motor then draws more than one and a half times its rated current, and light-loaded at low speed it growls and gets hot.",
                Remedy = "Start straight through the low frequencies; or a control method that adds voltage only under load.",
                Value = boost.Boost.Ratio * 100,
                Limit = boost.Highest.Ratio * Bearable * 100,
                Unit = "%",
            };
    }
}
