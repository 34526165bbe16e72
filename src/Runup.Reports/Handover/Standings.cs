using Runup.Commissioning.Handover;
using Runup.Reports.Html;

namespace Runup.Reports.Handover;

/// <summary>Who stands for a finding, in a line beneath it.</summary>
internal static class Standings
{
    /// <summary>The line; none where nobody stands for what nobody need stand for.</summary>
    public static HtmlWriter Standing(this HtmlWriter html, FindingStanding standing, bool isToBeAccepted) => standing switch
    {
        FindingStanding.Accepted { By: var by } => html.In("p", null, line => line
            .Element("b", $"Accepted by {by.Body.By}").Text($" on {Numbers.Of(by.Time)}, because: {by.Body.Because}")),
        FindingStanding.Outdated { Then: var then } => html.In("p", null, line => line
            .Element("b", "Not accepted as it is now. ")
            .Text($"{then.Body.By} accepted it on {Numbers.Of(then.Time)} as it was then ({then.Body.Weight}{Numbers.Against(then.Body.Value, then.Body.Limit, then.Body.Unit)}; {then.Body.Title}), because: {then.Body.Because}")),
        FindingStanding.Open => isToBeAccepted ? html.Element("p", "Nobody has accepted it.") : html,
        _ => throw new InvalidOperationException("The ways in which a finding stands are all named."),
    };
}
