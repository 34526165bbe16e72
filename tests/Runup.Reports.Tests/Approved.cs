using Runup.Reports.Tests.Example;

namespace Runup.Reports.Tests;

/// <summary>Texts that somebody read and found right; a change has to be read again.</summary>
internal static class Approved
{
    /// <summary>Compares with the file of that name; what came out lies beside it as NAME.received, to be read and put in its place.</summary>
    public static void ShouldBeApproved(this string text, string name)
    {
        var folder = Path.Combine(ExampleDrive.Root, "tests", "Runup.Reports.Tests", "Approved");
        var file = Path.Combine(folder, name);
        var received = $"{file}.received";
        var approved = File.Exists(file) ? File.ReadAllText(file).ReplaceLineEndings("\n") : string.Empty;
        if (string.Equals(approved, text, StringComparison.Ordinal))
        {
            File.Delete(received);
            return;
        }

        Directory.CreateDirectory(folder);
        File.WriteAllText(received, text);
        var (now, before) = (text.Split('\n'), approved.Split('\n'));
        var first = now.Zip(before).TakeWhile(pair => string.Equals(pair.First, pair.Second, StringComparison.Ordinal)).Count();
        Assert.Fail($"{name} differs from line {first + 1} on:\n  now:      {now.ElementAtOrDefault(first)}\n  approved: {before.ElementAtOrDefault(first)}\nRead {received}, and if it is right put it in the place of {name}.");
    }
}
