namespace Runup.Store.Opening;

/// <summary>
/// Makes an empty record beside its place and moves it there when it is whole: a program that is killed meanwhile leaves
/// nothing that the next one takes for a record of another program. Only the holder of the writer's lock does so.
/// </summary>
internal static class NewRecord
{
    private const string Unfinished = ".new";

    private static readonly string[] Companions = ["", "-journal", "-wal", "-shm"];

    public static bool IsNeeded(string folder)
    {
        var place = SiteRecord.DatabaseIn(folder);
        return !Directory.Exists(place) && (!File.Exists(place) || new FileInfo(place).Length == 0);
    }

    public static void Make(string folder)
    {
        var place = SiteRecord.DatabaseIn(folder);
        var beside = place + Unfinished;
        foreach (var companion in Companions)
        {
            File.Delete(beside + companion);
        }

        using (var connection = SiteRecord.Connect(beside, StoreUse.Append))
        {
            connection.Open();
            Schema.Migrate(connection);
        }

        File.Move(beside, place, overwrite: true);
    }
}
