using System.Text.Json;
using Runup.Outside.Tests.Modbus;

namespace Runup.Outside.Tests.Files;

/// <summary>The shipped JSON Schema held against independent programs: jsonschema (Debian's python3-jsonschema) and PyYAML (python3-yaml).</summary>
public sealed class JobSchemaTests
{
    [Fact]
    public async Task An_independent_validator_takes_the_jobs_of_the_manual_and_refuses_their_corruptions()
    {
        var python = await PythonAsync();
        Assert.SkipUnless(python is not null, "jsonschema or PyYAML is not installed: apt-get install python3-jsonschema python3-yaml");
        var root = RepositoryRoot.Folder;
        var run = (await OtherProgram.RunAsync(
            python,
            Path.Combine(AppContext.BaseDirectory, "Files", "job_schema.py"),
            Path.Combine(root, "data", "schema", "runup-job.schema.json"),
            Path.Combine(root, "docs", "formats", "job-file.md"))).ShouldNotBeNull();
        run.Status.ShouldBe(0, run.Errors);
        using var said = JsonDocument.Parse(run.Output);
        said.RootElement.GetProperty("jobs").GetRawText().ShouldBe("[[], [], []]");
        said.RootElement.GetProperty("variant").GetRawText().ShouldBe("[]");
        var refused = said.RootElement.GetProperty("refused").EnumerateObject().ToList();
        refused.Count.ShouldBe(11);
        refused.ShouldAllBe(r => r.Value.GetBoolean());
    }

    internal static async Task<string?> PythonAsync()
    {
        foreach (var python in new[] { "/usr/bin/python3", "python3" })
        {
            if (await OtherProgram.RunAsync(python, "-c", "import jsonschema, yaml; jsonschema.Draft202012Validator") is { Status: 0 })
            {
                return python;
            }
        }

        return null;
    }
}
