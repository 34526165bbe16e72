using Runup.Commissioning.Handover;

namespace Runup.Reports.Site;

/// <summary>What a site's summary says.</summary>
/// <param name="Name">The site's name.</param>
/// <param name="Rows">Its sets, in the order in which they are listed.</param>
/// <param name="WrittenAt">When it was written.</param>
/// <param name="WrittenBy">What wrote it.</param>
/// <param name="Remark">What holds for all of it, such as that the drives are simulated; null for none.</param>
public sealed record SiteSummary(string Name, IReadOnlyList<SiteRow> Rows, DateTimeOffset WrittenAt, string WrittenBy, string? Remark = null);
