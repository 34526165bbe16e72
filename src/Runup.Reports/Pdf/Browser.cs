namespace Runup.Reports.Pdf;

/// <summary>Finds a browser of the Chromium family, which can print a page to PDF without a window.</summary>
public static class Browser
{
    private static readonly string[] Names =
    [
        "chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "chrome", "microsoft-edge-stable", "microsoft-edge", "msedge", "brave-browser", "vivaldi-stable",
    ];

    private static readonly string[] BelowProgramFiles =
    [
        Path.Combine("Google", "Chrome", "Application", "chrome.exe"), Path.Combine("Chromium", "Application", "chrome.exe"),
        Path.Combine("Microsoft", "Edge", "Application", "msedge.exe"), Path.Combine("BraveSoftware", "Brave-Browser", "Application", "brave.exe"),
    ];

    private static readonly string[] OnMac =
    [
        "/Applications/Chromium.app/Contents/MacOS/Chromium", "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
        "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge", "/Applications/Brave Browser.app/Contents/MacOS/Brave Browser",
    ];

    /// <summary>The one of this computer; null where none was found.</summary>
    public static string? Find() => Find(Places(Environment.GetEnvironmentVariable), File.Exists);

    /// <summary>The first of some places at which there is a file.</summary>
    internal static string? Find(IEnumerable<string> places, Func<string, bool> isThere) => places.FirstOrDefault(isThere);

    /// <summary>Where one is looked for: the folders of PATH, then where installers put them.</summary>
    internal static IEnumerable<string> Places(Func<string, string?> variable) =>
    [
        .. from folder in (variable("PATH") ?? string.Empty).Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
           where Path.IsPathFullyQualified(folder)
           from name in Names
           select Path.Combine(folder, OperatingSystem.IsWindows() ? name + ".exe" : name),
        .. from root in (string[])["ProgramFiles", "ProgramFiles(x86)", "LocalAppData"]
           where !string.IsNullOrEmpty(variable(root))
           from below in BelowProgramFiles
           select Path.Combine(variable(root)!, below),
        .. OnMac,
    ];
}
