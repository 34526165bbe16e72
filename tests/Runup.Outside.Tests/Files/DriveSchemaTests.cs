using System.Text.Json;
using Runup.Outside.Tests.Modbus;

namespace Runup.Outside.Tests.Files;

/// <summary>The shipped JSON Schema of drive profiles held against independent programs: jsonschema (Debian's python3-jsonschema) and PyYAML (python3-yaml).</summary>
public sealed class DriveSchemaTests
{
    [Fact]
    public async Task An_independent_validator_takes_every_profile_that_we_show_and_refuses_corruptions()
    {
        var python = await JobSchemaTests.PythonAsync();
        Assert.SkipUnless(python is not null, "jsonschema or PyYAML is not installed: apt-get install python3-jsonschema python3-yaml");
        var root = RepositoryRoot.Folder;
        var run = (await OtherProgram.RunAsync(
            python,
            Path.Combine(AppContext.BaseDirectory, "Files", "drive_schema.py"),
            Path.Combine(root, "data", "schema", "runup-drive.schema.json"),
            Path.Combine(root, "docs", "formats", "drive-profile.md"),
            Path.Combine(root, "data", "drives", "tern.drive.yaml"),
            Path.Combine(root, "data", "drives", "osprey.drive.yaml"))).ShouldNotBeNull();
        run.Status.ShouldBe(0, run.Errors);
        using var said = JsonDocument.Parse(run.Output);
        said.RootElement.GetProperty("examples").GetRawText().ShouldBe("[[], [], []]");
        said.RootElement.GetProperty("makes").GetRawText().ShouldBe("[[], []]");
        var refused = said.RootElement.GetProperty("refused").EnumerateObject().ToList();
        refused.Count.ShouldBe(9);
        refused.ShouldAllBe(r => r.Value.GetBoolean());
    }
}
