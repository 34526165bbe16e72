using FsCheck;
using FsCheck.Fluent;

namespace Runup.Files.Tests.Fuzz;

/// <summary>One change to a text: a piece put in, taken out, put over, or said twice.</summary>
/// <param name="Kind">Which of the four.</param>
/// <param name="At">Where, in thousandths of the text.</param>
/// <param name="Length">How many characters.</param>
/// <param name="Piece">What is put in.</param>
internal sealed record Mutation(int Kind, int At, int Length, string Piece)
{
    private const int Parts = 1_000_000;

    /// <summary>Changes with these pieces, one to some, tried with ever fewer where one fails.</summary>
    internal static Arbitrary<List<Mutation>> Several(IReadOnlyList<string> pieces, int most)
    {
        var one = Gen.Zip(Gen.Zip(Gen.Choose(0, 3), Gen.Choose(0, Parts)), Gen.Zip(Gen.Choose(0, 40), Gen.Elements<string>([.. pieces])))
            .Select(m => new Mutation(m.Item1.Item1, m.Item1.Item2, m.Item2.Item1, m.Item2.Item2));
        return Arb.From(Gen.Choose(1, most).SelectMany(n => Gen.ListOf(one, n)).Select(l => l.ToList()), Fewer);
    }

    internal static string Apply(string text, IEnumerable<Mutation> mutations) => mutations.Aggregate(text, (t, m) => m.On(t));

    private static IEnumerable<List<Mutation>> Fewer(List<Mutation> list) =>
        list.Count < 2 ? [] : Enumerable.Range(0, list.Count).Select(i => list.Where((_, j) => j != i).ToList());

    private string On(string text)
    {
        var at = (int)((long)text.Length * At / Parts);
        var end = Math.Min(text.Length, at + Length);
        return Kind switch
        {
            0 => text.Insert(at, Piece),
            1 => text.Remove(at, end - at),
            2 => text.Remove(at, end - at).Insert(at, Piece),
            _ => text.Insert(at, text[at..end]),
        };
    }
}
