using Microsoft.Extensions.Time.Testing;
using Runup.Reports.Pdf;

namespace Runup.Reports.Tests.Pdf;

public sealed class PrintedPageTests
{
    [Fact]
    public async Task A_browser_that_never_ends_is_given_up()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "needs a shell");
        var time = new FakeTimeProvider();
        var printing = Print("exec sleep 1000", time);
        time.Advance(TimeSpan.FromSeconds(61));

        (await printing).ShouldBeOfType<Printing.Failed>().Why.ShouldBe("it was not done after 60 s");
    }

    [Theory]
    [InlineData("exit 0", "it wrote no file")]
    [InlineData("exit 3", "it ended with status 3")]
    [InlineData("for a in \"$@\"; do case \"$a\" in --print-to-pdf=*) echo hello >\"${a#*=}\";; esac; done", "what it wrote is no PDF")]
    public async Task What_is_no_browser_gives_no_PDF(string script, string why)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "needs a shell");

        (await Print(script, TimeProvider.System)).ShouldBeOfType<Printing.Failed>().Why.ShouldBe(why);
    }

    [Fact]
    public async Task What_is_not_there_does_not_start() =>
        (await PrintedPage.Print(Path.Combine(Path.GetTempPath(), "no-such-browser"), "page.html", PrintedPage.Patience, TimeProvider.System, default))
            .ShouldBeOfType<Printing.Failed>().Why.ShouldStartWith("it can't be started: ");

    [Fact]
    public void The_first_on_PATH_is_taken_and_where_there_is_none_there_is_none()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "paths of another form");
        var places = Browser.Places(name => name is "PATH" ? "/a:relative:/b" : null).ToList();

        Browser.Find(places, p => p is "/b/chromium").ShouldBe("/b/chromium");
        Browser.Find(places, _ => false).ShouldBeNull();
        places.ShouldNotContain(p => p.StartsWith("relative", StringComparison.Ordinal));
    }

    private static async Task<Printing> Print(string script, TimeProvider time)
    {
        var folder = Directory.CreateTempSubdirectory("runup-test-");
        try
        {
            var browser = Path.Combine(folder.FullName, "browser");
            // Nothing is awaited before the clock is asked, so that whoever holds it can advance it.
            File.WriteAllText(browser, $"#!/bin/sh\n{script}\n");
            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(browser, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            }

            return await PrintedPage.Print(browser, Path.Combine(folder.FullName, "page.html"), PrintedPage.Patience, time, TestContext.Current.CancellationToken);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
