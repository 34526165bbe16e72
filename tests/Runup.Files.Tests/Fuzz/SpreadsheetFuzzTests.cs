using System.IO.Compression;
using System.Text;
using FsCheck.Fluent;
using Runup.Files.Listings;
using Runup.Files.Tests.Listings;

namespace Runup.Files.Tests.Fuzz;

/// <summary>Whatever a spreadsheet's bytes or parts have become, a person gets rows or problems, and never an exception.</summary>
public sealed class SpreadsheetFuzzTests
{
    private static readonly string[] Pieces =
        ["<", ">", "</", "/>", "<row>", "</row>", "<c r=\"A1\"/>", "<c r=\"ZZZZZZ9\"><v>1</v></c>", "<v>", "1e999", "-1", "99999999999", "NaN", "t=\"s\"", "t=\"x\"", "s=\"99\"", "r=\"0\"", "r=\"4294967295\"", "numFmtId=\"164\"", "&lt;", "&x;", "&#0;", "&#x1F600;", "<!DOCTYPE a>", "<?xml version=\"1.1\"?>", "<!--", "-->", "<![CDATA[", "]]>", "\"", "Target=\"../..\"", "TargetMode=\"External\"", "\uFFFF", "xmlns=\"a\"", "mc:Ignorable=\"x\""];

    private static readonly Lazy<IReadOnlyList<(string Name, string Text)>> Parts = new(() =>
    {
        using var zip = new ZipArchive(new MemoryStream(SpreadsheetTests.Book()));
        return [.. zip.Entries.Select(e => (e.FullName, new StreamReader(e.Open()).ReadToEnd()))];
    });

    [Fact]
    public void Changed_bytes_are_read_or_refused()
    {
        var book = SpreadsheetTests.Book();
        var changes = Gen.Choose(1, 20).SelectMany(n => Gen.ListOf(Gen.Zip(Gen.Choose(0, book.Length - 1), Gen.Choose(0, 255)), n));
        FuzzLane.Hold(Arb.From(changes), 60, list =>
        {
            var bytes = (byte[])book.Clone();
            foreach (var (at, value) in list)
            {
                bytes[at] = (byte)value;
            }

            Try(bytes);
        });
    }

    [Fact]
    public void A_changed_part_is_read_or_refused() =>
        FuzzLane.Hold(Mutation.Several(Pieces, 6), 100, mutations => Try(With(mutations[0].At % Parts.Value.Count, t => Mutation.Apply(t, mutations))));

    private static byte[] With(int changed, Func<string, string> change)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            for (var i = 0; i < Parts.Value.Count; i++)
            {
                using var part = zip.CreateEntry(Parts.Value[i].Name, CompressionLevel.Fastest).Open();
                part.Write(Encoding.UTF8.GetBytes(i == changed ? change(Parts.Value[i].Text) : Parts.Value[i].Text));
            }
        }

        return stream.ToArray();
    }

    private static void Try(byte[] bytes)
    {
        var problems = new Problems("t.xlsx");
        var cautions = new Problems("t.xlsx");
        var listing = ListingFile.Read(bytes, ListingKind.Spreadsheet, ListingOptions.Guess, problems, cautions);
        TableFuzzTests.Hold(listing, problems, cautions);
    }
}
