namespace Runup.Profiles.Tests;

/// <summary>What a drive may hold, at random.</summary>
internal static class AnyValues
{
    internal static ParameterValues Of(DriveProfile profile, int seed)
    {
        var random = new Random(seed);
        return profile.Parameters.Where(p => p.IsKept).Aggregate(Makes.Defaults(profile), (values, p) => values.With(p.Number, p.Form switch
        {
            ParameterForm.Choices c => c.Values[random.Next(c.Values.Count)].Raw,
            ParameterForm.Numeric n when n.Specials.Count > 0 && random.Next(4) == 0 => n.Specials[random.Next(n.Specials.Count)].Raw,
            ParameterForm.Numeric n => random.NextInt64(n.Low, n.High + 1),
            _ => 0,
        }));
    }
}
