using Runup.Commissioning.Handover;
using Runup.Reports.Html;

namespace Runup.Reports.Handover;

/// <summary>The settings in words of the trade, each with its reason.</summary>
internal static class SettingsSection
{
    public static void Write(HtmlWriter html, HandoverModel model)
    {
        html.Element("h2", "5 Settings and why");
        if (model.Settings.Count == 0)
        {
            html.Element("p", "The job decides no settings.");
            return;
        }

        html.In("table", "tight settings", table => table
            .Own("<thead><tr><th>Setting</th><th>Value</th><th>Why, and where it comes from</th><th>In the drive</th></tr></thead>\n")
            .In("tbody", null, body =>
            {
                foreach (var setting in model.Settings)
                {
                    body.In("tr", null, row => row
                        .In("td", null, cell => cell.Text(setting.Name.Replace('-', ' ')).Own("<br/>").Element("small", setting.Rank.ToString().ToLowerInvariant()))
                        .In("td", "cell", cell =>
                        {
                            cell.Element("b", setting.Value);
                            if (setting.Bounds is { } bounds)
                            {
                                cell.Element("small", $"would do: {bounds}");
                            }
                        })
                        .In("td", null, cell => cell.Text(setting.Reason).Own("<br/>").Element("small", setting.Source))
                        .Element("td", setting.EnteredAs));
                }
            }));
    }
}
