using Runup.Files.Yaml;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Files.Profiles;

/// <summary>Reads the make's trip codes with their causes.</summary>
internal static class TripReader
{
    internal static TripCodes Read(MapReader? map)
    {
        var codes = new List<TripCode>();
        foreach (var entry in map?.Map.Entries ?? [])
        {
            var problems = map!.Problems;
            if (RawNumber.Parse(entry.Key) is not { } code)
            {
                problems.Add(entry.Value.KeyPlace, entry.Value.KeyPath, $"{Quote.Of(entry.Key)} is not a code", "a whole number, or hexadecimal digits with an h behind, would do");
            }
            else if (entry.Value.AsText(problems, "a trip cause") is { } name)
            {
                if (TripCauseNames.Find(name) is { } cause)
                {
                    codes.Add(new TripCode(code, cause));
                }
                else
                {
                    var causes = Enum.GetValues<TripCause>().Select(c => c.Name());
                    problems.Add(entry.Value, $"there is no trip cause {Quote.Of(name)}", Spelling.Nearest(name, causes) is { } nearest ? $"`{nearest}` would do" : "one of " + Quote.List(causes) + " would do");
                }
            }
        }

        return new TripCodes(codes);
    }
}
