using FsCheck;
using FsCheck.Fluent;
using Runup.Files.Jobs;

namespace Runup.Files.Tests.Jobs;

/// <summary>Mutations of a good job file: each is a job or a list of problems, never an exception.</summary>
public sealed class JobFuzzTests : IDisposable
{
    private static readonly string[] Pieces =
        ["\t", "\0", "{", "}", "[", "]", "\"", "'", "&a ", "*a", "!x ", "|", ">", "- ", "? ", ": ", ",", "#", "%", "\n", "\r", "  ", "\u0085", "\ud800", "---\n", "...\n", "<<: ", "\\", "é", "\U0001F600",
            "7,5", "1,500", "1.500", "-", "0", "1e999", "kW", "mW", "NaN", "null", "~", "yes", "value: ", "from: ", "../", "AWG", "1/2", "\uFEFF", "runup: 2\n"];

    private readonly string folder = FullJob.Folder(Directory.CreateTempSubdirectory("runup-fuzz-").FullName);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Any_mutation_is_a_job_or_problems_that_say_where_and_what()
    {
        var count = Environment.GetEnvironmentVariable("RUNUP_LONG") is null ? 2000 : 50_000;
        var mutation = Gen.Zip(Gen.Zip(Gen.Choose(0, 3), Gen.Choose(0, FullJob.Text.Length)), Gen.Zip(Gen.Choose(0, 40), Gen.Elements(Pieces)));
        var mutations = Gen.Choose(1, 4).SelectMany(n => Gen.ListOf(mutation, n));
        Prop.ForAll(Arb.From(mutations), list => IsJobOrProblems(list.Aggregate(FullJob.Text, (text, m) => Mutate(text, m.Item1.Item1, m.Item1.Item2, m.Item2.Item1, m.Item2.Item2))))
            .Check(Config.QuickThrowOnFailure.WithMaxTest(count));
    }

    private static string Mutate(string text, int kind, int at, int length, string piece)
    {
        at = Math.Min(at, text.Length);
        var end = Math.Min(at + length, text.Length);
        return kind switch
        {
            0 => text.Insert(at, piece),
            1 => text.Remove(at, end - at),
            2 => text.Remove(at, end - at).Insert(at, piece),
            _ => text.Insert(at, text[at..end]),
        };
    }

    private bool IsJobOrProblems(string text)
    {
        var lines = text.Count(c => c is '\n' or '\r' or '\u0085') + 1;
        var motor = JobFile.ReadMotorText(text, "f.yaml", folder);
        return JobFile.ReadText(text, "f.yaml", folder) switch
        {
            JobReading.Read => motor is MotorReading.Read,
            JobReading.Faulty f => f.Problems.Count > 0 && f.Problems.All(p => IsWellSaid(p, lines)),
            _ => false,
        };
    }

    private static bool IsWellSaid(FileProblem p, int lines) =>
        p.Line >= 1 && p.Line <= lines && p.Column >= 1 && p.Key.Length > 0 && p.Found.Length > 0 && p.WouldDo.Length > 0
        && !p.ToString().Any(char.IsControl);
}
