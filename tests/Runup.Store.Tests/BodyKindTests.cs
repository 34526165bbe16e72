using Runup.Commissioning.Records;
using Runup.Store.Tests.Contract;

namespace Runup.Store.Tests;

public sealed class BodyKindTests
{
    [Fact]
    public void Every_kind_of_body_is_named_for_the_disk_and_has_an_example_here()
    {
        var kinds = typeof(RecordBody).GetNestedTypes().Where(t => t.IsSubclassOf(typeof(RecordBody))).Select(t => t.Name).Order(StringComparer.Ordinal).ToList();

        EveryBody.All.Select(b => b.GetType().Name).Order(StringComparer.Ordinal).ShouldBe(kinds);
        EveryBody.All.ShouldAllBe(b => RecordText.Write(b).StartsWith("{\"kind\":\"", StringComparison.Ordinal));
        EveryBody.All.Select(b => RecordText.Write(b).Split('"')[3]).ShouldAllBe(k => RecordText.Knows(k));
    }

    // What was once written must be read for as long as there is paper with its hash: a change of any of these lines is a mistake.
    [Fact]
    public void The_form_on_disk_stays_as_it_is() => string.Join('\n', EveryBody.All.Skip(3).Take(9).Select(RecordText.Write)).ShouldBe(
        """
        {"kind":"entry-begun","sheet_sha256":"bbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbb","lines":["104","2101h:1"],"resumed":true}
        {"kind":"write-intended","parameter":"104","before":null,"raw":-1}
        {"kind":"write-ended","parameter":"104","outcome":"differs","read_back":7,"why":"7,5 kW · Ω \"<b>\" \\ \n\t 漢 \uD83D\uDE00 ’"}
        {"kind":"store-asked","outcome":"accepted"}
        {"kind":"power-cycle-seen"}
        {"kind":"entry-ended","verified":24,"failed":{"107":"refused"},"proved_after_power_cycle":false}
        {"kind":"step-begun","step":"uncoupled-5hz"}
        {"kind":"reading-taken","step":"uncoupled-5hz","quantity":"output current","unit":"A","expected":5.2,"low":0.30000000000000004,"high":"Infinity","measured":null,"within":null}
        {"kind":"trend","step":"ramp","columns":["time_s","output_current_A"],"rows":[[0,1E-300],[0.1,"NaN"]],"predicted":false}
        """);

    [Fact]
    public void What_was_seen_by_eye_is_written_beside_and_nothing_where_it_was_not() => string.Join('\n', ((RecordBody[])[
            new RecordBody.ParameterSeen("as-found", "104", 5, "A. Person", null),
            new RecordBody.WriteEnded("104", "verified-by-eye", 5, null, "A. Person"),
            new RecordBody.PowerCycleSeen("A. Person"),
            new RecordBody.EntryEnded(0, new Dictionary<string, string>(StringComparer.Ordinal), ProvedAfterPowerCycle: false, VerifiedByEye: 1, SeenAfterPowerCycle: true),
        ]).Select(RecordText.Write)).ShouldBe(
        """
        {"kind":"parameter-seen","moment":"as-found","parameter":"104","raw":5,"seen_by":"A. Person","why":null}
        {"kind":"write-ended","parameter":"104","outcome":"verified-by-eye","read_back":5,"why":null,"seen_by":"A. Person"}
        {"kind":"power-cycle-seen","seen_by":"A. Person"}
        {"kind":"entry-ended","verified":0,"failed":{},"proved_after_power_cycle":false,"verified_by_eye":1,"seen_after_power_cycle":true}
        """);

    [Theory]
    [InlineData("", "not JSON")]
    [InlineData("null", "null")]
    [InlineData("[]", "none")]
    [InlineData("{}", "none")]
    [InlineData("""{"kind":"other"}""", "other")]
    [InlineData("""{"kind":"write-intended","parameter":"1","raw":"x"}""", "write-intended")]
    public void What_can_not_be_read_is_an_answer(string text, string kind) =>
        RecordText.Read(text).ShouldBe(new RecordReading.Unknown(kind));

    [Fact]
    public void A_member_that_was_added_later_is_skipped() =>
        RecordText.Read("""{"kind":"step-begun","step":"a","later":[1]}""").ShouldBe(new RecordReading.Known(new RecordBody.StepBegun("a")));
}
