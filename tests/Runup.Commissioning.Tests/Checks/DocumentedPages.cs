namespace Runup.Commissioning.Tests.Checks;

/// <summary>The pages on calculations, as shipped beside the tests.</summary>
internal static class DocumentedPages
{
    internal static string Page(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", "calculations", $"{name}.md"));
}
