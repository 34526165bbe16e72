using Runup.Commissioning.Handover;

namespace Runup.Commissioning.Tests.Handover;

public sealed class RestoreTextTests
{
    [Fact]
    public void What_is_written_is_read_back()
    {
        var read = RestoreText.Read(RestoreText.Write(File)).ShouldBeOfType<RestoreReading.Read>().File;

        read.Parameters.ShouldBe(File.Parameters);
        (read with { Parameters = File.Parameters }).ShouldBe(File);
        read.ReadAt.Offset.ShouldBe(TimeSpan.FromHours(2));
    }

    // The checksum is what this prints: printf 'tern\n7.5-400\n104=750\n220=4' | sha256sum
    [Fact]
    public void It_reads_as_approved() => RestoreText.Write(File).ShouldBe(
        """
        {
          "runup_restore": 1,
          "tag": "SWP-101",
          "profile": "tern",
          "size": "7.5-400",
          "identity": "Tern · 1.0",
          "read_at": "2026-05-04T08:30:51+02:00",
          "chain_head": "ab12",
          "sha256": "52c14b1cb0e8112ab4d8936d9fb6a2ae309a7a0b1c9c0ec89102dd40af412e86",
          "parameters": [
            {
              "parameter": "104",
              "name": "Motor output",
              "display": "7.50",
              "unit": "kW",
              "raw": 750
            },
            {
              "parameter": "220",
              "name": "Run and direction",
              "display": "bus forward",
              "unit": null,
              "raw": 4
            }
          ]
        }

        """);

    [Theory]
    [InlineData("\"raw\": 750", "\"raw\": 751")]
    [InlineData("\"parameter\": \"104\"", "\"parameter\": \"105\"")]
    [InlineData("\"size\": \"7.5-400\"", "\"size\": \"11-400\"")]
    [InlineData("\"profile\": \"tern\"", "\"profile\": \"osprey\"")]
    public void A_value_that_was_changed_shows(string from, string to) =>
        RestoreText.Read(RestoreText.Write(File).Replace(from, to, StringComparison.Ordinal)).ShouldBeOfType<RestoreReading.Altered>();

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("{\"runup_restore\": 1}")]
    [InlineData("not a file")]
    public void What_is_no_restore_file_is_said(string text) => RestoreText.Read(text).ShouldBeOfType<RestoreReading.NotReadable>();

    [Fact]
    public void A_format_of_later_is_named() =>
        RestoreText.Read(RestoreText.Write(File).Replace("\"runup_restore\": 1", "\"runup_restore\": 2", StringComparison.Ordinal))
            .ShouldBeOfType<RestoreReading.NotReadable>().Why.ShouldContain("format 2");

    private static RestoreFile File { get; } = new()
    {
        Tag = "SWP-101",
        Profile = "tern",
        Size = "7.5-400",
        Identity = "Tern · 1.0",
        ReadAt = new DateTimeOffset(2026, 5, 4, 8, 30, 51, TimeSpan.FromHours(2)),
        ChainHead = "ab12",
        Parameters = [new("104", "Motor output", "7.50", "kW", 750), new("220", "Run and direction", "bus forward", null, 4)],
    };
}
