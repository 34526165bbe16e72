using System.Text.RegularExpressions;

namespace Runup.DriveLink.Tests;

/// <summary>What pages for people show of links is what the program takes.</summary>
public sealed partial class DocumentedLinksTests
{
    [Theory]
    [InlineData("docs/how-to/serial-ports.md")]
    [InlineData("docs/handed-out.txt")]
    public void Each_link_that_is_shown_is_taken(string page)
    {
        var links = Links().Matches(Text(page)).Select(m => m.Groups["link"].Value).ToList();
        links.ShouldNotBeEmpty();
        links.ShouldAllBe(l => LinkText.Read(l) is LinkText.Address);
    }

    [Fact]
    public void Links_that_are_said_to_be_known_and_not_spoken_are_so()
    {
        var links = Serial().Matches(Text("docs/how-to/serial-ports.md")).Select(m => m.Groups["link"].Value).ToList();
        links.Count.ShouldBe(2);
        links.ShouldAllBe(l => LinkText.Read(l) is LinkText.NotYet);
    }

    private static string Text(string page)
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Runup.slnx")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests run within the checkout.");
        }

        return File.ReadAllText(Path.Combine(folder, page));
    }

    [GeneratedRegex("--link (?<link>[^\\s`]+)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Links();

    [GeneratedRegex("`(?<link>rtu(tcp)?:[^`]+)`", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Serial();
}
