using Runup.Settings;

namespace Runup.Profiles;

/// <summary>A plan of settings in a drive's own parameters, in the order of entry.</summary>
public static class Sheet
{
    /// <summary>The lines for every setting of the plan; at the end those that the drive does not offer.</summary>
    /// <param name="profile">The drive's profile.</param>
    /// <param name="size">Its size.</param>
    /// <param name="plan">What is wanted.</param>
    /// <param name="before">What the drive holds, as found or from the factory.</param>
    public static IReadOnlyList<SheetLine> For(DriveProfile profile, DriveSize size, SettingSet plan, ParameterValues before) =>
        Lines(profile, size, plan, before, whole: false);

    /// <summary>As <see cref="For"/>, with a line for each parameter that the plan leaves alone, too.</summary>
    public static IReadOnlyList<SheetLine> Whole(DriveProfile profile, DriveSize size, SettingSet plan, ParameterValues before) =>
        Lines(profile, size, plan, before, whole: true);

    /// <summary>What the drive holds once the lines are entered.</summary>
    public static ParameterValues After(IEnumerable<SheetLine> lines, ParameterValues before)
    {
        var after = before;
        foreach (var line in lines)
        {
            if (line is { Parameter: { } parameter, Raw: { } raw })
            {
                after = after.With(parameter.Number, raw);
            }
        }

        return after;
    }

    private static List<SheetLine> Lines(DriveProfile profile, DriveSize size, SettingSet plan, ParameterValues before, bool whole)
    {
        var defaults = ParameterValues.Defaults(profile, size);

        // What was not read is worked out with factory values: the best that is known.
        var working = defaults.With(before);
        var lines = new List<SheetLine>();
        foreach (var parameter in EntryOrder.Of(profile))
        {
            var planned = parameter.IsKept && parameter.Meaning?.Settings.Any(s => plan[s] is not null) == true;
            if (!planned && !(whole && parameter.IsKept))
            {
                continue;
            }

            var line = new SheetLine
            {
                Order = lines.Count + 1,
                Parameter = parameter,
                Settings = planned ? [.. parameter.Meaning!.Settings.Where(s => plan[s] is not null)] : [],
                BeforeDisplay = before[parameter.Number] is { } held ? DisplayText.Of(parameter, held, before) : null,
                BeforeUnit = DisplayText.Unit(parameter, before),
                DefaultDisplay = DisplayText.Of(parameter, defaults[parameter.Number]!.Value, defaults),
            };
            lines.Add(planned ? Planned(line, profile, size, plan, before, ref working) : Untouched(line, before, working));
        }

        var missing = plan.Select(p => p.Key).Where(s => !profile.Carrying(s).Any(p => p.IsKept)).OrderBy(Place);
        lines.AddRange(missing.Select((setting, i) => new SheetLine { Order = lines.Count + 1 + i, Settings = [setting], Mapping = Profiles.Mapping.NotOffered, Note = "The drive has no parameter for it." }).ToList());
        return lines;
    }

    private static SheetLine Planned(SheetLine line, DriveProfile profile, DriveSize size, SettingSet plan, ParameterValues before, ref ParameterValues working)
    {
        var parameter = line.Parameter!;
        switch (SettingCodec.Encode(new Surroundings(profile, working), parameter, size, plan))
        {
            case Encoding.Value value:
                working = working.With(parameter.Number, value.Raw);
                var unit = DisplayText.Unit(parameter, working);
                return line with
                {
                    Mapping = value.Mapping,
                    Fit = value.Fit,
                    Raw = value.Raw,
                    Display = DisplayText.Of(parameter, value.Raw, working),
                    Unit = unit,
                    Changed = before[parameter.Number] != value.Raw || !string.Equals(unit, line.BeforeUnit, StringComparison.Ordinal),
                    Note = value.Note,
                };
            case Encoding.Undecided undecided:
                return line with { Mapping = Mapping.NeedsChoice, Unit = DisplayText.Unit(parameter, working), Note = undecided.Why };
            default:
                throw new InvalidOperationException("Every outcome is told apart.");
        }
    }

    private static SheetLine Untouched(SheetLine line, ParameterValues before, ParameterValues working) => line with
    {
        Raw = before[line.Parameter!.Number],
        Display = line.BeforeDisplay,
        Unit = DisplayText.Unit(line.Parameter, working),
    };

    private static int Place(Setting setting)
    {
        for (var i = 0; i < Setting.All.Count; i++)
        {
            if (Setting.All[i] == setting)
            {
                return i;
            }
        }

        return Setting.All.Count;
    }
}
