using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Runup.Files.Jobs;
using Runup.Files.Jobs.Keys;
using Runup.Files.Tests.Profiles;
using Runup.Quantities;

namespace Runup.Files.Tests.Jobs;

/// <summary>The page on the job file says what the reader does.</summary>
/// <remarks>With RUNUP_WRITE_DOCS=1 the parts that the code determines are written anew.</remarks>
public sealed class JobFilePageTests
{
    private static readonly string PagePath = Path.Combine(Drives.Root, "docs", "formats", "job-file.md");

    private readonly string page = File.ReadAllText(PagePath).ReplaceLineEndings("\n");

    [Fact]
    public void Every_job_on_the_page_is_a_job()
    {
        var jobs = Blocks("yaml job").ToList();
        jobs.Count.ShouldBe(3);
        foreach (var job in jobs)
        {
            FullJob.Problems(job).ShouldBeEmpty();
        }
    }

    [Fact]
    public void The_motor_on_the_page_is_a_motor() =>
        JobFile.ReadMotorText(Blocks("yaml motor").Single(), "m.yaml").ShouldBeOfType<MotorReading.Read>().Motor.Plate.Output.Value.Watts.ShouldBe(5592.749, 0.001);

    [Fact]
    public void The_faulty_file_gives_the_messages_on_the_page()
    {
        var messages = string.Join('\n', JobFile.ReadText(Blocks("yaml faulty").Single(), "p-101.job.yaml").ShouldBeOfType<JobReading.Faulty>().Problems) + "\n";
        Same(Blocks("text").Single(), messages, "```text\n", "```");
    }

    [Fact]
    public void Every_spelling_on_the_page_is_read_as_it_says()
    {
        var rows = Between("spellings").Split('\n').Skip(2).Select(r => r.Split('|', StringSplitOptions.TrimEntries)).Where(r => r.Length > 3).ToList();
        rows.Count.ShouldBeGreaterThan(30);
        foreach (var row in rows)
        {
            var (written, dimension, meaning) = (row[1].Trim('`'), Dimension.All.Single(d => d.Name == row[2]), row[3]);
            switch (QuantityText.ReadSi(dimension, written))
            {
                case Reading<double>.Value v:
                    var wanted = QuantityText.ReadSi(dimension, meaning).ShouldBeOfType<Reading<double>.Value>(written);
                    v.Quantity.ShouldBe(wanted.Quantity, Math.Max(wanted.Quantity * 1e-12, v.RoundingSi == 0 ? wanted.RoundingSi : 0), written);
                    break;
                case Reading<double>.Problem p when meaning.StartsWith("asked: ", StringComparison.Ordinal):
                    p.Found.ShouldBe($"`{written}` can be {meaning[7..]}");
                    break;
                default:
                    meaning.ShouldStartWith("refused", customMessage: written);
                    break;
            }
        }
    }

    [Fact]
    public void The_units_on_the_page_are_those_that_are_read()
    {
        var table = new StringBuilder("| Of | Units | Also written |\n|---|---|---|\n");
        foreach (var d in Dimension.All.Where(d => d != Dimension.PureNumber))
        {
            table.Append(CultureInfo.InvariantCulture, $"| {d.Name} | {Words(d.Units.Select(u => u.Symbol))}{(d == Dimension.Area ? ", `AWG`" : "")} | {Words(d.Units.SelectMany(u => u.Spellings))} |\n");
        }

        Same(Between("units"), table.ToString(), "<!-- units -->\n", "<!-- /units -->");
    }

    [Fact]
    public void The_keys_on_the_page_are_those_that_are_read()
    {
        var table = new StringBuilder("| Key | Needed | Example | What it is |\n|---|---|---|---|\n");
        foreach (var path in JobKeys.Paths(JobKeys.Top, ""))
        {
            var key = JobKeys.Find(path)!;
            var needed = key.Need switch
            {
                Need.Always => "yes",
                Need.Conditional c => $"with {c.Key} {string.Join(", ", c.Words)}",
                _ => "",
            };
            var about = key.Words.Count == 0 ? key.About : $"{key.About} ({Words(key.Words)})";
            table.Append(CultureInfo.InvariantCulture, $"| `{path}` | {needed} | {(key.Section is null ? $"`{key.Example}`" : "")} | {about} |\n");
        }

        Same(Between("keys"), table.ToString(), "<!-- keys -->\n", "<!-- /keys -->");
    }

    private static string Words(IEnumerable<string> words) => string.Join(", ", words.Select(w => $"`{w}`"));

    private void Same(string onPage, string made, string opening, string closing)
    {
        if (Environment.GetEnvironmentVariable("RUNUP_WRITE_DOCS") is not null)
        {
            var text = File.ReadAllText(PagePath).ReplaceLineEndings("\n");
            var start = text.IndexOf(opening, StringComparison.Ordinal) + opening.Length;
            File.WriteAllText(PagePath, text[..start] + made + text[text.IndexOf(closing, start, StringComparison.Ordinal)..]);
            return;
        }

        onPage.ShouldBe(made, "the page has fallen behind: run these tests with RUNUP_WRITE_DOCS=1");
    }

    private string Between(string mark)
    {
        var start = page.IndexOf($"<!-- {mark} -->\n", StringComparison.Ordinal) + mark.Length + 10;
        return page[start..page.IndexOf($"<!-- /{mark} -->", StringComparison.Ordinal)];
    }

    private IEnumerable<string> Blocks(string kind) =>
        Regex.Matches(page, $"^```{kind}\n(?<body>.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Select(m => m.Groups["body"].Value);
}
