using System.Globalization;
using System.Text.Json;
using Runup.Files;
using Runup.Files.Listings;
using Runup.Outside.Tests.Modbus;
using Runup.Profiles;

namespace Runup.Outside.Tests.Files;

/// <summary>Electronic data sheets (CiA 306) held against a reader that stands on Python's configparser and knows nothing of Runup.</summary>
public sealed class DataSheetTests
{
    private const int Sheets = 120;

    [Fact]
    public async Task An_independent_reader_finds_the_same_objects_types_limits_defaults_and_access()
    {
        var python = await PythonAsync();
        Assert.SkipUnless(python is not null, "python3 is not installed: apt-get install python3");
        var folder = Directory.CreateTempSubdirectory("runup-eds-");
        try
        {
            var own = Path.Combine(RepositoryRoot.Folder, "tests", "Runup.Files.Tests", "Listings", "Eds");
            List<string> files = [.. Directory.EnumerateFiles(own, "*.eds"), .. Directory.EnumerateFiles(own, "*.dcf")];
            files.Count.ShouldBeGreaterThanOrEqualTo(2);
            for (var seed = 0; seed < Sheets; seed++)
            {
                var file = Path.Combine(folder.FullName, seed.ToString(CultureInfo.InvariantCulture) + ".eds");
                await File.WriteAllTextAsync(file, RandomDataSheet.Of(seed), TestContext.Current.CancellationToken);
                files.Add(file);
            }

            var run = (await OtherProgram.RunAsync(python, [Path.Combine(AppContext.BaseDirectory, "Files", "eds_reader.py"), .. files])).ShouldNotBeNull();
            run.Status.ShouldBe(0, run.Errors);
            using var said = JsonDocument.Parse(run.Output);
            var objects = 0;
            foreach (var file in files)
            {
                var theirs = said.RootElement.GetProperty(file).EnumerateObject().Where(o => !IsBus(o.Name)).Select(o => $"{o.Name} {Told(o.Value)}").Order(StringComparer.Ordinal).ToList();
                Ours(file).ShouldBe(theirs, file);
                objects += theirs.Count;
            }

            objects.ShouldBeGreaterThan(1000);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static List<string> Ours(string file)
    {
        var problems = new Problems(file);
        var listing = ListingFile.ReadFile(file, ListingOptions.Guess, problems, new Problems(file));

        // Chance may write a sheet without any object that fits: then there is nothing to import, and that is said.
        return listing is null
            ? [.. problems.InOrder().Where(p => !p.Found.Contains("no object that is a parameter", StringComparison.Ordinal)).Select(p => p.ToString())]
            : [.. listing.Parameters.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Number} {p.Name}|{p.Group}|{p.Width}|{p.Signed}|{p.Low}|{p.High}|{p.Default}|{p.Access}")).Order(StringComparer.Ordinal)];
    }

    private static string Told(JsonElement told) => string.Join('|',
        told.GetProperty("name").GetString(),
        told.GetProperty("group").GetString(),
        told.GetProperty("bits").GetRawText(),
        told.GetProperty("signed").GetBoolean(),
        Figure(told, "low"),
        Figure(told, "high"),
        Figure(told, "default"),
        told.GetProperty("access").GetString() switch { "ro" or "const" => ParameterAccess.ReadOnly, "wo" => ParameterAccess.Action, "" => null, _ => (ParameterAccess?)ParameterAccess.StoppedOnly });

    private static string Figure(JsonElement told, string key) => told.GetProperty(key) is { ValueKind: JsonValueKind.Number } number ? number.GetRawText() : "";

    // Objects of CiA 301 by which the bus itself is set up; they are no parameters of a drive.
    private static bool IsBus(string number) =>
        int.Parse(number.AsSpan(0, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture) is >= 0x1005 and <= 0x100F or >= 0x1012 and <= 0x1017 or >= 0x1019 and <= 0x1FFF;

    private static async Task<string?> PythonAsync()
    {
        foreach (var python in new[] { "/usr/bin/python3", "python3" })
        {
            if (await OtherProgram.RunAsync(python, "-c", "import configparser") is { Status: 0 })
            {
                return python;
            }
        }

        return null;
    }
}
