using System.Xml;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;

namespace Runup.Files.Listings;

/// <summary>Reads a part of a spreadsheet element by element, so that a file made to swell does not fill the memory.</summary>
internal static class XlsxPart
{
    private const int MostElements = 3_000_000;
    private const int Deepest = 64;
    private const long Longest = 16L * 1024 * 1024;

    private static readonly XmlReaderSettings Strict = new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, MaxCharactersInDocument = Longest };

    /// <summary>The elements of a kind, in the part's order; none where there is no such part.</summary>
    /// <exception cref="InvalidDataException">More than any table has.</exception>
    internal static IEnumerable<T> Each<T>(OpenXmlPart? part)
        where T : OpenXmlElement
    {
        if (part is null)
        {
            yield break;
        }

        Look(part);
        using var reader = OpenXmlReader.Create(part);
        while (reader.Read())
        {
            if (reader.IsStartElement && reader.ElementType == typeof(T) && reader.LoadCurrentElement() is T element)
            {
                yield return element;
            }
        }
    }

    // The library builds an element with all that it holds, however deep and many: what is made to swell is seen before.
    private static void Look(OpenXmlPart part)
    {
        using var stream = part.GetStream(FileMode.Open, FileAccess.Read);
        using var xml = XmlReader.Create(stream, Strict);
        var count = 0;
        while (xml.Read())
        {
            count += xml.NodeType is XmlNodeType.Element ? 1 : 0;
            if (count > MostElements || xml.Depth > Deepest)
            {
                throw new InvalidDataException("Too many elements, or too deep.");
            }
        }
    }
}
