using Runup.Files.Yaml;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Files.Profiles;

/// <summary>Reads the make's trip codes with their causes; each must be one that the register of the last trip can give.</summary>
internal static class TripReader
{
    internal static TripCodes Read(MapReader? map, Parameter? lastTrip)
    {
        var codes = new List<TripCode>();
        foreach (var entry in map?.Map.Entries ?? [])
        {
            var problems = map!.Problems;
            if (RawNumber.Parse(entry.Key) is not { } code)
            {
                problems.Add(entry.Value.KeyPlace, entry.Value.KeyPath, $"{Quote.Of(entry.Key)} is not a code", "a whole number, or hexadecimal digits with an h behind, would do");
            }
            else if (lastTrip is not null && !RegisterImage.Fits(lastTrip, code))
            {
                problems.Add(entry.Value.KeyPlace, entry.Value.KeyPath, $"the register of {lastTrip.Number} does not hold the code {Quote.Of(entry.Key)}", "the code as the drive gives it would do");
            }
            else if (codes.Exists(c => c.Code == code))
            {
                problems.Add(entry.Value.KeyPlace, entry.Value.KeyPath, $"the code {Quote.Of(entry.Key)} stands twice, the other time written otherwise", "keep one of the two");
            }
            else if (entry.Value.AsText(problems, "a trip cause") is { } name)
            {
                var cause = TripCauseNames.Find(name);
                if (code == 0 && cause is not (null or TripCause.None))
                {
                    problems.Add(entry.Value.KeyPlace, entry.Value.KeyPath, "the code 0, which is no trip", "the code as the drive gives it would do");
                }
                else if (cause is { } known)
                {
                    codes.Add(new TripCode(code, known));
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
