namespace Runup.Profiles;

/// <summary>The order of entry must exist, and what can start the motor must be able to go last.</summary>
internal static class OrderLint
{
    internal static IEnumerable<LintFinding> Check(DriveProfile profile)
    {
        var (_, circle) = EntryOrder.Sorted(profile);
        var inCircle = circle.Select(p => p.Number).ToHashSet(StringComparer.Ordinal);
        foreach (var parameter in circle.Where(p => InCircle(profile, p, inCircle)))
        {
            var before = EntryOrder.Before(profile, parameter).First(inCircle.Contains);
            yield return ProfileLint.Error(parameter, null, $"it must come after `{before}`, and `{before}` in the end after it", "an order of entry without a circle");
        }

        foreach (var parameter in profile.Parameters.Where(p => p.IsKept && !EntryOrder.CanStartMotor(p)))
        {
            if (EntryOrder.Before(profile, parameter).FirstOrDefault(n => profile.Find(n) is { } other && EntryOrder.CanStartMotor(other)) is { } starter)
            {
                yield return ProfileLint.Caution(parameter.Number, "after", $"it must come after `{starter}`, which can make a motor start and ought to go last", "check whether the manual really asks for it");
            }
        }
    }

    // What merely waits for a circle is not in it: it can't be reached from itself.
    private static bool InCircle(DriveProfile profile, Parameter start, HashSet<string> circle)
    {
        var open = new Stack<string>(EntryOrder.Before(profile, start).Where(circle.Contains));
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (open.TryPop(out var number))
        {
            if (string.Equals(number, start.Number, StringComparison.Ordinal))
            {
                return true;
            }

            if (seen.Add(number) && profile.Find(number) is { } parameter)
            {
                foreach (var next in EntryOrder.Before(profile, parameter).Where(circle.Contains))
                {
                    open.Push(next);
                }
            }
        }

        return false;
    }
}
