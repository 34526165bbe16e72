using Runup.Commissioning.Handover;
using Runup.Reports.Html;
using Runup.Reports.Label;

namespace Runup.Reports.Handover;

/// <summary>The door label at its real size, to be cut out.</summary>
internal static class LabelSection
{
    public static void Write(HtmlWriter html, HandoverModel model) => html.In("div", "whole", box => box
        .Element("h2", "11 Label for the panel's door")
        .In("figure", "cut", figure => figure
            .Own(DoorLabel.Write(model))
            .Own("""<svg class="rule" width="50mm" height="4mm" viewBox="0 0 50 4" aria-hidden="true"><path d="M.15 0v4M49.85 0v4M0 2h50" fill="none" stroke="#111" stroke-width=".3"/></svg>""")
            .Element("figcaption", "To be cut out. This line is 50 mm long where it was printed at full size. The code holds tag, time, and both checksums in full.")));
}
