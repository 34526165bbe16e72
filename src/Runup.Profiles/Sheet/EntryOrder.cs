using Runup.Settings;

namespace Runup.Profiles;

/// <summary>The order in which parameters are entered: what others depend on first, then the make's menu order, what can start the motor last.</summary>
public static class EntryOrder
{
    // Safety: these can make a motor start by itself, so nothing is left to enter once they hold.
    private static readonly HashSet<string> CanStart = new(StringComparer.Ordinal)
    {
        Setting.RunCommandSource.Name, Setting.RestartAfterPowerLoss.Name, Setting.AutomaticReset.Name, Setting.AutomaticResetDelay.Name,
    };

    /// <summary>Whether a parameter goes last because it can make a motor start: run source, restart and automatic reset.</summary>
    public static bool CanStartMotor(Parameter parameter) => parameter.Meaning?.Settings.Any(s => CanStart.Contains(s.Name)) == true;

    /// <summary>All parameters of a profile in the order of entry.</summary>
    public static IReadOnlyList<Parameter> Of(DriveProfile profile) => Sorted(profile).Order;

    /// <summary>The parameters that a parameter must come after: those that its conversion, its unit and its manual name.</summary>
    public static IEnumerable<string> Before(DriveProfile profile, Parameter parameter)
    {
        var conversion = (parameter.Meaning as Meaning.Quantity)?.Conversion;
        IEnumerable<string> unit = parameter.Form is ParameterForm.Numeric { Unit: ParameterUnit.ChosenBy chosen } ? [chosen.Parameter] : [];
        var meanings = conversion switch
        {
            Conversion.CountedOver => [Setting.MaximumFrequency],
            Conversion.NoSlipSpeed => [Setting.MotorPoleCount],
            Conversion.SpeedChange or Conversion.ChangeTime => (IReadOnlyList<Setting>)[Setting.MaximumFrequency, Setting.MotorPoleCount],
            _ => [],
        };

        // Speed and time of a change name each other; the time is chosen first.
        var reads = conversion is Conversion.ChangeTime ? [] : conversion?.Reads ?? [];
        return parameter.After.Concat(unit).Concat(reads).Concat(meanings.SelectMany(profile.Carrying).Select(p => p.Number))
            .Where(n => !string.Equals(n, parameter.Number, StringComparison.Ordinal)).Distinct(StringComparer.Ordinal);
    }

    /// <summary>The order, and the parameters that wait for one another in a circle.</summary>
    internal static (IReadOnlyList<Parameter> Order, IReadOnlyList<Parameter> Circle) Sorted(DriveProfile profile)
    {
        var place = profile.Parameters.Select((p, i) => (p.Number, i)).ToDictionary(x => x.Number, x => x.i, StringComparer.Ordinal);
        var waits = profile.Parameters.Select(p => Before(profile, p).Where(place.ContainsKey).Select(n => place[n]).ToHashSet()).ToList();
        var ready = new SortedSet<(int Phase, int Place)>();
        for (var i = 0; i < waits.Count; i++)
        {
            if (waits[i].Count == 0)
            {
                ready.Add((Phase(profile.Parameters[i]), i));
            }
        }

        var order = new List<Parameter>(waits.Count);
        while (ready.Count > 0)
        {
            var next = ready.Min;
            ready.Remove(next);
            order.Add(profile.Parameters[next.Place]);
            for (var i = 0; i < waits.Count; i++)
            {
                if (waits[i].Remove(next.Place) && waits[i].Count == 0)
                {
                    ready.Add((Phase(profile.Parameters[i]), i));
                }
            }
        }

        var circle = profile.Parameters.Where((_, i) => waits[i].Count > 0).ToList();
        return ([.. order, .. circle], circle);
    }

    // A lock would refuse all that comes after it.
    private static int Phase(Parameter parameter) =>
        parameter.Meaning?.Settings.Contains(Setting.ParameterLock) == true ? 2 : CanStartMotor(parameter) ? 1 : 0;
}
