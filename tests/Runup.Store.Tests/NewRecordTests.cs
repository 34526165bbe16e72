namespace Runup.Store.Tests;

public sealed class NewRecordTests
{
    [Fact]
    public void A_record_that_was_being_made_when_the_program_was_killed_is_made_anew()
    {
        using var folder = new SiteFolder();
        File.WriteAllText(Path.Combine(folder.Path, "runup.db.new"), "half of a database");
        File.WriteAllText(Path.Combine(folder.Path, "runup.db.new-journal"), "half of a journal");
        (folder.TryOpen() is StoreOpening.Opened).ShouldBeTrue();
        File.Exists(Path.Combine(folder.Path, "runup.db.new")).ShouldBeFalse();
    }
}
