using Runup.Commissioning.Plan;
using Runup.Commissioning.Sheet;
using Runup.Profiles;

namespace Runup.Files.Tests.Sheets;

/// <summary>Sheets made by hand, with what is hard on a table.</summary>
internal static class Sheets
{
    internal static SheetModel Of(params IEnumerable<SheetEntry> entries) => new()
    {
        Tag = "P & 1",
        Title = "=Pump",
        Drive = "Any drive, size 1",
        WrittenAt = new DateTimeOffset(2026, 3, 1, 12, 0, 0, TimeSpan.FromHours(2)),
        Extent = SheetExtent.Decided,
        Checksum = "0123456789ab",
        Entries = [.. entries],
        Without = [],
    };

    internal static SheetEntry Entry(int order, string display, string why = "asked for", string name = "Name", string? before = null) => new(
        new SheetRow(
            new SheetLine { Order = order, Parameter = Parameter(name), Settings = [], Display = display, Unit = "s", Before = new ShownValue(1, before ?? display, "s"), Default = new ShownValue(1, before ?? display, "s"), Raw = 1, Changed = before is not null },
            Rank.Must,
            why),
        [],
        why);

    private static Parameter Parameter(string name) => new()
    {
        Number = "104",
        Name = name,
        Group = "All",
        Form = new ParameterForm.Numeric(DisplayScale.Of(0.01m), new ParameterUnit.Fixed("s"), 0, 1000, 1, []),
        Register = 104,
        Access = ParameterAccess.AnyTime,
        Default = 0,
    };
}
