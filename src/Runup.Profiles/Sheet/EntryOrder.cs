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

    /// <summary>Number of the parameter that chooses a parameter's unit, or null.</summary>
    public static string? UnitChosenBy(Parameter parameter) =>
        parameter.Form is ParameterForm.Numeric { Unit: ParameterUnit.ChosenBy chosen } ? chosen.Parameter : null;

    /// <summary>Whether the digits of others mean something else once this parameter changes.</summary>
    public static bool ChoosesUnits(DriveProfile profile, Parameter parameter) =>
        profile.Parameters.Any(p => string.Equals(UnitChosenBy(p), parameter.Number, StringComparison.Ordinal));

    /// <summary>The parameters that show something else once this one has a new value: those that stand in the unit that it chooses, and those that it resets.</summary>
    public static IEnumerable<Parameter> MovedBy(DriveProfile profile, Parameter parameter) =>
        profile.Parameters.Where(p => p.IsKept && string.Equals(UnitChosenBy(p), parameter.Number, StringComparison.Ordinal)).Union(profile.SetBy(parameter));

    /// <summary>All parameters of a profile in the order of entry.</summary>
    public static IReadOnlyList<Parameter> Of(DriveProfile profile) => Sorted(profile).Order;

    /// <summary>The parameters that a parameter must come after: those that its conversion, its unit, its range and its manual name, and the one that would undo it.</summary>
    public static IEnumerable<string> Before(DriveProfile profile, Parameter parameter) =>
        Before(profile, parameter, (parameter.Meaning as Meaning.Quantity)?.Conversion);

    /// <summary>The same for a parameter that is read by a conversion which is not its meaning, as a reading is.</summary>
    internal static IEnumerable<string> Before(DriveProfile profile, Parameter parameter, Conversion? conversion)
    {
        IEnumerable<string> unit = UnitChosenBy(parameter) is { } chooser ? [chooser] : [];
        var meanings = conversion switch
        {
            Conversion.CountedOver => [Setting.MaximumFrequency],
            Conversion.NoSlipSpeed => [Setting.MotorPoleCount],
            Conversion.BelowSynchronous => [Setting.MotorPoleCount, .. RatedFrequency(profile)],
            Conversion.OfRatedSlip => [Setting.MotorPoleCount, Setting.MotorRatedSpeed, .. RatedFrequency(profile)],
            Conversion.SpeedChange or Conversion.ChangeTime => [Setting.MaximumFrequency, Setting.MotorPoleCount],
            _ => (IReadOnlyList<Setting>)[],
        };

        // Speed and time of a change name each other; the time is chosen first.
        var reads = conversion is Conversion.ChangeTime ? [] : conversion?.Reads ?? [];
        var reset = parameter.DefaultFrom is { } from && profile.Find(from.Parameter) is { Resets: true } ? [from.Parameter] : Array.Empty<string>();
        return parameter.After.Concat(unit).Concat(parameter.BoundBy).Concat(reset).Concat(reads).Concat(meanings.SelectMany(profile.Carrying).Select(p => p.Number))
            .Where(n => !string.Equals(n, parameter.Number, StringComparison.Ordinal)).Distinct(StringComparer.Ordinal);
    }

    private static IEnumerable<Setting> RatedFrequency(DriveProfile profile) =>
        [profile.Carrying(Setting.MotorRatedFrequency).Count > 0 ? Setting.MotorRatedFrequency : Setting.BaseFrequency];

    /// <summary>The order, and the parameters that wait for one another in a circle.</summary>
    internal static (IReadOnlyList<Parameter> Order, IReadOnlyList<Parameter> Circle) Sorted(DriveProfile profile)
    {
        var parameters = profile.Parameters;
        var waiting = new int[parameters.Count];
        var followers = Followers(profile, waiting);
        var phases = new int[parameters.Count];
        for (var i = 0; i < phases.Length; i++)
        {
            phases[i] = Phase(parameters[i]);
        }

        var taken = new bool[parameters.Count];
        var order = new List<Parameter>(parameters.Count);
        while (Next(taken, waiting, phases) is var next and >= 0)
        {
            taken[next] = true;
            order.Add(parameters[next]);
            foreach (var follower in followers[next])
            {
                waiting[follower]--;
            }
        }

        var circle = parameters.Where((_, i) => !taken[i]).ToList();
        return ([.. order, .. circle], circle);
    }

    // For each parameter those that must come after it; and counts for each how many it waits for.
    private static List<int>[] Followers(DriveProfile profile, int[] waiting)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        var followers = new List<int>[profile.Parameters.Count];
        for (var i = 0; i < followers.Length; i++)
        {
            places.Add(profile.Parameters[i].Number, i);
            followers[i] = [];
        }

        for (var i = 0; i < followers.Length; i++)
        {
            foreach (var number in Before(profile, profile.Parameters[i]))
            {
                if (places.TryGetValue(number, out var first))
                {
                    followers[first].Add(i);
                    waiting[i]++;
                }
            }
        }

        return followers;
    }

    // The first in the menu of those that wait for nothing, in the earliest phase; -1 where none is left.
    private static int Next(bool[] taken, int[] waiting, int[] phases)
    {
        var next = -1;
        for (var i = 0; i < taken.Length; i++)
        {
            if (!taken[i] && waiting[i] == 0 && (next < 0 || phases[i] < phases[next]))
            {
                next = i;
            }
        }

        return next;
    }

    // A lock would refuse all that comes after it.
    private static int Phase(Parameter parameter) =>
        parameter.Meaning?.Settings.Contains(Setting.ParameterLock) == true ? 2 : CanStartMotor(parameter) ? 1 : 0;
}
