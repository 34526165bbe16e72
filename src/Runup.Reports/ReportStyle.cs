namespace Runup.Reports;

/// <summary>The style sheets that the reports carry within them.</summary>
internal static class ReportStyle
{
    internal static string Of(string name)
    {
        using var stream = typeof(ReportStyle).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
