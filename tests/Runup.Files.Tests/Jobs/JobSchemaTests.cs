using System.Text.Json.Nodes;
using Runup.Files.Jobs;
using Runup.Files.Jobs.Keys;
using Runup.Files.Tests.Profiles;
using Runup.Quantities;

namespace Runup.Files.Tests.Jobs;

public sealed class JobSchemaTests
{
    [Fact]
    public void The_shipped_file_is_the_one_that_the_table_of_keys_makes()
    {
        var path = Path.Combine(Drives.Root, JobSchema.ShippedAt);
        var made = JobSchema.Write();
        if (Environment.GetEnvironmentVariable("RUNUP_WRITE_SCHEMA") is not null)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, made);
        }

        File.ReadAllText(path).ShouldBe(made, $"the table of keys has changed: run this test with RUNUP_WRITE_SCHEMA=1 to write {JobSchema.ShippedAt} anew");
    }

    [Fact]
    public void Every_key_has_a_description() =>
        JobKeys.Paths(JobKeys.Top, "").Select(p => JobKeys.Find(p)!).ShouldAllBe(k => k.About.Length > 3 && k.Schema()["description"] != null);

    [Fact]
    public void Patterns_take_every_spelling_and_refuse_a_bare_number()
    {
        foreach (var dimension in Dimension.All.Where(d => d != Dimension.PureNumber))
        {
            var pattern = new System.Text.RegularExpressions.Regex(QuantityPattern.For(dimension), System.Text.RegularExpressions.RegexOptions.ECMAScript, TimeSpan.FromSeconds(1));
            foreach (var spelling in dimension.Units.SelectMany(u => u.Spellings.Prepend(u.Symbol)))
            {
                pattern.IsMatch("7.5 " + spelling).ShouldBeTrue(spelling);
                pattern.IsMatch("-7,5" + spelling).ShouldBeTrue(spelling);
            }

            pattern.IsMatch("7.5").ShouldBeFalse(dimension.Name);
            pattern.IsMatch("7.5 furlongs").ShouldBeFalse(dimension.Name);
        }
    }

    [Fact]
    public void References_lead_to_definitions()
    {
        var schema = JsonNode.Parse(JobSchema.Write())!;
        var definitions = schema["$defs"]!.AsObject().Select(d => "#/$defs/" + d.Key).ToHashSet();
        var used = References(schema).ToHashSet();
        used.ShouldBe(definitions, ignoreOrder: true);
    }

    private static IEnumerable<string> References(JsonNode? node) => node switch
    {
        JsonObject o => o.SelectMany(p => p.Key == "$ref" ? [p.Value!.GetValue<string>()] : References(p.Value)),
        JsonArray a => a.SelectMany(References),
        _ => [],
    };
}
