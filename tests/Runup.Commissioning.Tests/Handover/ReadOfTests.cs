using Runup.Commissioning.Entry;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;
using Runup.Commissioning.Tests.Checks;
using Runup.Profiles;

namespace Runup.Commissioning.Tests.Handover;

public sealed class ReadOfTests
{
    [Theory]
    [InlineData("Invented make Tern 1.0", "105", true)]
    [InlineData("Invented make Tern 2.3", "105", true)]
    [InlineData("Invented make Osprey 1.0", "105", false)]
    [InlineData("Invented make Tern 1.0", "6046h:1", false)]
    public void A_reading_is_of_a_family_that_says_its_name_and_knows_its_numbers(string identity, string number, bool isOf) =>
        ReadOf.Family(Read(identity, number), DemoFiles.Tern).ShouldBe(isOf);

    [Fact]
    public void A_profile_that_does_not_tell_how_it_answers_goes_by_the_numbers()
    {
        var nameless = new DriveProfile(DemoFiles.Tern.Parameters) { Family = "nameless", Title = "Nameless", Sizes = DemoFiles.Tern.Sizes };
        ReadOf.Family(Read("Anything", "105"), nameless).ShouldBeTrue();
        ReadOf.Family(Read("Anything", "6046h:1"), nameless).ShouldBeFalse();
    }

    private static RecordBody.ParametersRead Read(string identity, string number) =>
        new(Moments.AsFound, identity, new Dictionary<string, long?>(StringComparer.Ordinal) { [number] = 1 });
}
