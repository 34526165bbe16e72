using System.Diagnostics;
using Runup.Files.Listings;

namespace Runup.Files.Tests.Fuzz;

/// <summary>A cell that goes on and on is read or refused, in a time that a person waits.</summary>
public sealed class EndlessCellTests
{
    [Fact]
    public void A_cell_without_end_is_no_matter_of_time()
    {
        var clock = Stopwatch.StartNew();
        foreach (var piece in (string[])["0: ", "0-", "1 000", "((", "0.", "a, ", "[0] ", "0 a "])
        {
            TableFuzzTests.Try("No.;Name;Range\n104;Output;" + string.Concat(Enumerable.Repeat(piece, 40_000)), ListingKind.Csv);
            TableFuzzTests.Try(string.Concat(Enumerable.Repeat(piece, 40_000)), ListingKind.Pasted);
        }

        clock.Elapsed.ShouldBeLessThan(TimeSpan.FromSeconds(120));
    }
}
