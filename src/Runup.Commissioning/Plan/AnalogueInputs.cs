using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>Scaling of the analogue inputs that the job names.</summary>
internal static class AnalogueInputs
{
    private static readonly string[] Losses = ["stop", "hold", "fixed", "off"];

    internal static void Plan(PlanBuilder plan, JobContext context)
    {
        Input(plan, context.Job.Control.Analogue1, Setting.AnalogueInput1Type, Setting.AnalogueInput1MinimumFrequency, Setting.AnalogueInput1MaximumFrequency, Setting.AnalogueInput1LossAction);
        Input(plan, context.Job.Control.Analogue2, Setting.AnalogueInput2Type, Setting.AnalogueInput2MinimumFrequency, Setting.AnalogueInput2MaximumFrequency, Setting.AnalogueInput2LossAction);
    }

    private static void Input(PlanBuilder plan, AnalogueSurvey? input, Setting type, Setting low, Setting high, Setting loss)
    {
        if (input is null)
        {
            return;
        }

        var signal = input.Signal?.Value;
        if (signal is not null && ((SettingForm.OneOf)type.Form).Choices.Contains(signal, StringComparer.Ordinal))
        {
            plan.Choice(type, signal, Rank.Must, "the signal that the control system sends", PlanBuilder.JobSource);
        }

        if (input.Low is { } bottom)
        {
            plan.Number(low, bottom.Value.Hertz, Rank.Must, "frequency at the low end of the signal", PlanBuilder.JobSource);
        }

        if (input.High is { } top)
        {
            plan.Number(high, top.Value.Hertz, Rank.Must, "frequency at the high end of the signal", PlanBuilder.JobSource);
        }

        if (input.OnLoss?.Value is { } action && Losses.Contains(action, StringComparer.Ordinal))
        {
            plan.Choice(loss, action, Rank.Must, "what a broken wire shall do", PlanBuilder.JobSource);
        }
        else if (signal == "4..20 mA")
        {
            plan.Choice(loss, "stop", Rank.Should, "a 4 to 20 mA signal shows a broken wire; nothing is said, so it stops", PlanBuilder.Practice);
        }
    }
}
