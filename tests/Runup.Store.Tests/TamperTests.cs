using System.Text;
using Runup.Commissioning.Records;
using Runup.Store.Chain;

namespace Runup.Store.Tests;

public sealed class TamperTests : IDisposable
{
    private readonly SiteFolder folder = new();

    public static TheoryData<string, long> Changes => new()
    {
        { "UPDATE entries SET body = replace(body, '1005', '1006') WHERE sequence = 5", 5 },
        { "UPDATE entries SET tag = 'P-102' WHERE sequence = 4", 4 },
        { "UPDATE entries SET at = '2020-01-01T00:00:00.0000000+00:00' WHERE sequence = 1", 1 },
        { "UPDATE entries SET hash = upper(hash) WHERE sequence = 3", 3 },
        { "DELETE FROM entries WHERE sequence = 6", 6 },
        { "DELETE FROM entries WHERE sequence = 1", 1 },
        { "UPDATE entries SET sequence = 100 WHERE sequence = 10", 10 },
        { "UPDATE entries SET body = CAST(X'ff' AS TEXT) WHERE sequence = 8", 8 },
        { "UPDATE entries SET at = X'', tag = 7 WHERE sequence = 2", 2 },
        { "UPDATE entries SET hash = X'00' WHERE sequence = 9", 9 },
    };

    [Theory]
    [MemberData(nameof(Changes))]
    public async Task A_change_behind_the_guards_names_the_first_entry_that_does_not_agree(string sql, long sequence)
    {
        await folder.Filled(10);
        BehindTheGuards(sql);

        var broken = folder.TryOpen().ShouldBeOfType<StoreOpening.ChainBroken>();
        broken.Sequence.ShouldBe(sequence);
        broken.What.ShouldContain($"Entry {sequence} ");
    }

    [Fact]
    public async Task One_byte_changed_in_the_file_names_the_entry_that_holds_it()
    {
        await folder.Filled(10);
        var bytes = await File.ReadAllBytesAsync(folder.Database);
        var place = bytes.AsSpan().IndexOf(Encoding.ASCII.GetBytes("\"raw\":1007"));
        place.ShouldBeGreaterThan(0);
        bytes[place + 9] = (byte)'8';
        await File.WriteAllBytesAsync(folder.Database, bytes);

        folder.TryOpen().ShouldBeOfType<StoreOpening.ChainBroken>().Sequence.ShouldBe(7);
    }

    [Fact]
    public async Task A_change_while_the_record_is_open_is_found_by_verify()
    {
        await folder.Filled(4);
        using var records = folder.Open();
        (await records.Verify(null, default)).ShouldBeOfType<ChainVerdict.Intact>();

        BehindTheGuards("UPDATE entries SET tag = 'P-102' WHERE sequence = 2");

        (await records.Verify(null, default)).ShouldBeOfType<ChainVerdict.Broken>().Sequence.ShouldBe(2);
    }

    [Fact]
    public async Task Entries_cut_off_at_the_end_show_against_a_printed_head()
    {
        var entries = await folder.Filled(10);
        BehindTheGuards("DELETE FROM entries WHERE sequence > 7");
        using var records = folder.Open();

        (await records.Verify(entries[6].Hash, default)).ShouldBeOfType<ChainVerdict.Intact>().Entries.ShouldBe(7);
        var missing = (await records.Verify(entries[9].Hash, default)).ShouldBeOfType<ChainVerdict.HeadMissing>();
        missing.Head.ShouldBe(entries[6].Hash);
    }

    [Fact]
    public async Task A_chain_computed_anew_after_a_change_shows_against_a_printed_head()
    {
        var entries = await folder.Filled(3);
        var forged = RecordText.Write(new RecordBody.WriteIntended("104", null, 7));
        var hash = RecordChain.Hash(entries[1].Hash, 3, RecordChain.TimeText(entries[2].At), "P-101", forged);
        BehindTheGuards($"UPDATE entries SET body = '{forged}', hash = '{hash}' WHERE sequence = 3");
        using var records = folder.Open();

        (await records.Verify(null, default)).ShouldBeOfType<ChainVerdict.Intact>();
        (await records.Verify(entries[2].Hash, default)).ShouldBeOfType<ChainVerdict.HeadMissing>();
    }

    [Fact]
    public async Task Guards_that_were_taken_off_are_noticed()
    {
        await folder.Filled(2);
        folder.Sql("DROP TRIGGER entries_no_update");

        folder.TryOpen().ShouldBeOfType<StoreOpening.Damaged>().What.ShouldContain("guards");
    }

    public void Dispose() => folder.Dispose();

    private void BehindTheGuards(string sql) => folder.Sql(
        $"DROP TRIGGER entries_no_update; DROP TRIGGER entries_no_delete; DROP TRIGGER entries_in_order; {sql}; {AppendOnlyGuards.Sql}");
}
