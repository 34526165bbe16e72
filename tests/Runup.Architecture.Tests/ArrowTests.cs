using ArchUnitNET.Loader;
using ArchUnitNET.xUnitV3;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace Runup.Architecture.Tests;

public sealed class ArrowTests
{
    private static readonly ArchUnitNET.Domain.Architecture Model = new ArchLoader()
        .LoadAssemblies([.. Rooms.MayUse.Keys.Select(Load)])
        .Build();

    public static TheoryData<string> AllRooms => [.. Rooms.MayUse.Keys];

    [Theory]
    [MemberData(nameof(AllRooms))]
    public void A_room_references_only_what_its_row_of_the_table_names(string room) =>
        Rooms.DirectReferences(room).Except(Rooms.MayUse[room], StringComparer.Ordinal).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(AllRooms))]
    public void A_room_knows_no_type_of_a_room_it_may_not_reach(string room)
    {
        var reachable = Rooms.Reachable(room);
        foreach (var other in Rooms.MayUse.Keys.Where(other => !reachable.Contains(other)))
        {
            Types().That().ResideInAssembly(Load(room))
                .Should().NotDependOnAny(Types().That().ResideInAssembly(Load(other)))
                .WithoutRequiringPositiveResults()
                .Check(Model);
        }
    }

    [Fact]
    public void Every_project_below_src_has_its_row_in_the_table() =>
        Directory.GetDirectories(Path.Combine(Rooms.Root, "src")).Select(d => Path.GetFileName(d)["Runup.".Length..])
            .Order(StringComparer.Ordinal).ShouldBe(Rooms.MayUse.Keys.Order(StringComparer.Ordinal));

    private static System.Reflection.Assembly Load(string room) =>
        System.Reflection.Assembly.Load(string.Equals(room, "Cli", StringComparison.Ordinal) ? "runup" : $"Runup.{room}");
}
