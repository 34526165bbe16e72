using System.Text;
using Microsoft.Data.Sqlite;
using Runup.Commissioning.Records;

namespace Runup.Store.Tests;

public sealed class OpeningTests : IDisposable
{
    private readonly SiteFolder folder = new();

    [Fact]
    public async Task A_record_goes_on_where_it_ended()
    {
        var before = await folder.Filled(3);

        using var records = folder.Open();
        var next = await records.Append("P-101", new RecordBody.PowerCycleSeen(), default);

        next.Sequence.ShouldBe(4);
        next.Hash.ShouldBe(RecordChain.Hash(before[2].Hash, 4, RecordChain.TimeText(next.At), "P-101", RecordText.Write(next.Body)));
    }

    [Fact]
    public void A_second_writer_is_told_at_once()
    {
        using var first = folder.Open();
        var begun = System.Diagnostics.Stopwatch.GetTimestamp();

        var second = folder.TryOpen().ShouldBeOfType<StoreOpening.InUse>();

        System.Diagnostics.Stopwatch.GetElapsedTime(begun).ShouldBeLessThan(TimeSpan.FromSeconds(2));
        second.What.ShouldBe($"Another Runup writes the record of {folder.Path} now; close it there and try again.");
    }

    [Fact]
    public async Task The_next_writer_comes_when_the_first_has_gone()
    {
        folder.Open().Dispose();
        using var second = folder.Open();

        (await second.Append("P-101", new RecordBody.PowerCycleSeen(), default)).Sequence.ShouldBe(1);
    }

    [Fact]
    public async Task A_reader_sees_what_was_appended_while_another_writes()
    {
        using var writer = folder.Open();
        await writer.Append("P-101", new RecordBody.StepBegun("a"), default);
        using var reader = folder.Open(use: StoreUse.ReadOnly);
        await writer.Append("P-101", new RecordBody.StepBegun("b"), default);

        (await reader.Of("P-101", default)).Count.ShouldBe(2);
        await Should.ThrowAsync<InvalidOperationException>(() => reader.Append("P-101", new RecordBody.PowerCycleSeen(), default));
    }

    [Fact]
    public void To_read_where_nothing_was_recorded_makes_nothing()
    {
        folder.TryOpen(StoreUse.ReadOnly).ShouldBeOfType<StoreOpening.Absent>();

        Directory.EnumerateFileSystemEntries(folder.Path).ShouldBeEmpty();
    }

    [Fact]
    public async Task Another_program_that_keeps_the_file_locked_makes_an_append_fail_in_words()
    {
        using var records = folder.Open();
        using var other = new SqliteConnection($"Data Source={folder.Database};Pooling=False");
        other.Open();
        using var command = other.CreateCommand();
        command.CommandText = "BEGIN IMMEDIATE";
        command.ExecuteNonQuery();

        var trouble = await Should.ThrowAsync<RecordsUnavailableException>(() => records.Append("P-101", new RecordBody.PowerCycleSeen(), default));
        trouble.Message.ShouldBe("The record runup.db can't be written: another program has it locked.");
        other.Close();

        (await records.Append("P-101", new RecordBody.PowerCycleSeen(), default)).Sequence.ShouldBe(1);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_said()
    {
        var answer = SqliteRecords.Open(Path.Combine(folder.Path, "none"), TimeProvider.System);

        answer.ShouldBeOfType<StoreOpening.Unreachable>().What.ShouldContain("There is no folder");
    }

    [Theory]
    [InlineData(0, 400)]
    [InlineData(40, 60)]
    [InlineData(4096, 9000)]
    public async Task A_damaged_file_is_an_answer_and_no_trace(int from, int to)
    {
        await folder.Filled(60);
        var bytes = await File.ReadAllBytesAsync(folder.Database);
        bytes.AsSpan(from, to - from).Fill(0xA5);
        await File.WriteAllBytesAsync(folder.Database, bytes);

        var answer = folder.TryOpen();

        (answer is StoreOpening.Damaged or StoreOpening.ChainBroken).ShouldBeTrue(answer.ToString());
        answer.What.ShouldNotContain(" at ");
        (await File.ReadAllBytesAsync(folder.Database)).ShouldBe(bytes, "what is damaged is kept as it is");
    }

    [Fact]
    public async Task A_file_cut_short_is_damaged()
    {
        await folder.Filled(60);
        await using (var file = File.OpenWrite(folder.Database))
        {
            file.SetLength(file.Length / 2);
        }

        var answer = folder.TryOpen();

        (answer is StoreOpening.Damaged or StoreOpening.ChainBroken).ShouldBeTrue(answer.ToString());
    }

    [Fact]
    public async Task A_text_file_of_that_name_is_damaged()
    {
        await File.WriteAllTextAsync(folder.Database, new string('x', 5000), Encoding.ASCII);

        folder.TryOpen().ShouldBeOfType<StoreOpening.Damaged>().What.ShouldContain("no record");
    }

    [Fact]
    public void A_database_of_another_program_is_left_alone()
    {
        folder.Sql("CREATE TABLE entries (a)");

        folder.TryOpen().ShouldBeOfType<StoreOpening.Damaged>().What.ShouldContain("another program");
    }

    [Fact]
    public async Task A_newer_schema_is_named_and_left_alone()
    {
        await folder.Filled(1);
        folder.Sql("INSERT INTO __EFMigrationsHistory VALUES ('29990101000000_Later', '99.0.0')");

        folder.TryOpen().ShouldBeOfType<StoreOpening.Newer>().What.ShouldContain("newer Runup");
    }

    [Fact]
    public async Task A_kind_of_entry_from_a_newer_program_is_named()
    {
        var last = (await folder.Filled(1))[0];
        const string body = """{"kind":"rotor-balanced","grade":2.5}""";
        const string at = "2027-01-01T00:00:00.0000000+00:00";
        folder.Sql($"INSERT INTO entries VALUES (2, '{at}', 'P-101', '{RecordChain.Hash(last.Hash, 2, at, "P-101", body)}', '{body}')");

        folder.TryOpen().ShouldBeOfType<StoreOpening.Newer>().What.ShouldContain("rotor-balanced");
    }

    [Fact]
    public void A_folder_in_the_files_place_is_unreachable()
    {
        Directory.CreateDirectory(folder.Database);

        folder.TryOpen().ShouldBeOfType<StoreOpening.Unreachable>().What.ShouldBe("runup.db can't be used: it can't be opened.");
    }

    public void Dispose() => folder.Dispose();
}
