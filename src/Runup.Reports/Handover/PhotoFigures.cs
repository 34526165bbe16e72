using System.Globalization;
using Runup.Commissioning.Handover;
using Runup.Reports.Html;

namespace Runup.Reports.Handover;

/// <summary>Photos within the page itself, each once in a place, with what it shows.</summary>
internal static class PhotoFigures
{
    /// <summary>The photos of a part of the survey, each with the data that it supports.</summary>
    public static void OfPart(HtmlWriter html, SurveyPart part, HandoverModel model) => Figures(html, model,
        [.. part.Rows.Where(r => r.Photo is not null).GroupBy(r => r.Photo!, StringComparer.Ordinal).Select(g => (g.Key, $"Shows: {string.Join("; ", g.Select(r => $"{r.Name} {r.Value}"))}"))]);

    /// <summary>The photos of the set as a whole.</summary>
    public static void OfSet(HtmlWriter html, HandoverModel model)
    {
        if (model.SetPhotos.Count > 0)
        {
            html.Element("h3", "Photos of the set");
            Figures(html, model, [.. model.SetPhotos.Select(p => (p.File, p.Note ?? string.Empty))]);
        }
    }

    private static void Figures(HtmlWriter html, HandoverModel model, IReadOnlyList<(string Name, string Caption)> photos)
    {
        if (photos.Count > 0)
        {
            html.In("div", "photos", box =>
            {
                foreach (var (name, caption) in photos)
                {
                    Figure(box, name, caption, model.Photos.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.Ordinal)));
                }
            });
        }
    }

    private static void Figure(HtmlWriter html, string name, string caption, ReportPhoto? photo) => html.In("figure", "photo", figure =>
    {
        if (photo is null)
        {
            figure.Element("figcaption", $"{caption} (the photo {name} was not read)");
            return;
        }

        figure.Own(string.Create(CultureInfo.InvariantCulture, $"<img src=\"data:image/jpeg;base64,{Convert.ToBase64String(photo.Jpeg.Span)}\" width=\"{photo.Width}\" height=\"{photo.Height}\" alt=\"{Escape.Text(caption.Length > 0 ? caption : name)}\"/>"))
            .In("figcaption", null, words => words.Text(caption).Own("<br/>").Element("small", $"{name}, SHA-256 {photo.Sha256[..16]}…"));
    });
}
