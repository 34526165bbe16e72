using Runup.Settings;

namespace Runup.Profiles;

/// <summary>A plan of settings in a drive's own parameters, in the order of entry.</summary>
public static class Sheet
{
    /// <summary>The lines for every setting of the plan; at the end those that the drive does not offer.</summary>
    /// <param name="profile">The drive's profile.</param>
    /// <param name="size">Its size.</param>
    /// <param name="plan">What is wanted.</param>
    /// <param name="before">What the drive holds, as found or from the factory; from this the values are worked out.</param>
    /// <param name="found">What the display shows before, where that is known and other.</param>
    public static IReadOnlyList<SheetLine> For(DriveProfile profile, DriveSize size, SettingSet plan, ParameterValues before, ParameterValues? found = null) =>
        Lines(profile, size, plan, before, found ?? before, whole: false);

    /// <summary>As <see cref="For"/>, with a line for each parameter that the plan leaves alone, too.</summary>
    public static IReadOnlyList<SheetLine> Whole(DriveProfile profile, DriveSize size, SettingSet plan, ParameterValues before, ParameterValues? found = null) =>
        Lines(profile, size, plan, before, found ?? before, whole: true);

    /// <summary>What the drive holds once the lines are entered.</summary>
    public static ParameterValues After(DriveProfile profile, DriveSize size, IEnumerable<SheetLine> lines, ParameterValues before)
    {
        ArgumentNullException.ThrowIfNull(profile);
        var after = before;
        foreach (var line in lines)
        {
            if (line is { Parameter: { } parameter, Raw: { } raw })
            {
                after = profile.Written(parameter, raw, size, after);
            }
        }

        return after;
    }

    private static List<SheetLine> Lines(DriveProfile profile, DriveSize size, SettingSet plan, ParameterValues before, ParameterValues seen, bool whole)
    {
        var defaults = ParameterValues.Defaults(profile, size);

        // What was not read is worked out with factory values: the best that is known.
        var working = defaults.With(before);
        var standing = defaults.With(seen);
        var lines = new List<SheetLine>();
        foreach (var parameter in EntryOrder.Of(profile))
        {
            var planned = parameter.IsKept && parameter.Meaning?.Settings.Any(s => plan[s] is not null) == true;
            if (!planned && !(whole && parameter.IsKept))
            {
                continue;
            }

            var (range, isNumber) = (profile.Range(parameter, size, working), parameter.Form is ParameterForm.Numeric);

            // A factory value that another parameter decides is the one beside what that holds now.
            var (factory, beside) = parameter.DefaultFrom is null ? (defaults[parameter.Number]!.Value, defaults) : (profile.Default(parameter, size, working), working);
            var line = new SheetLine
            {
                Order = lines.Count + 1,
                Parameter = parameter,
                Settings = planned ? [.. parameter.Meaning!.Settings.Where(s => plan[s] is not null)] : [],
                Before = seen[parameter.Number] is { } held ? DisplayText.Shown(parameter, held, defaults.With(seen)) : null,
                Default = DisplayText.Shown(parameter, factory, beside),
                Low = isNumber ? DisplayText.Shown(parameter, range.Low, working) : null,
                High = isNumber ? DisplayText.Shown(parameter, range.High, working) : null,
            };
            lines.Add(planned ? Planned(line, profile, size, plan, ref working, ref standing) : Untouched(line, standing));
        }

        var missing = plan.Select(p => p.Key).Where(s => !profile.Carrying(s).Any(p => p.IsKept)).OrderBy(Place);
        lines.AddRange(missing.Select((setting, i) => new SheetLine { Order = lines.Count + 1 + i, Settings = [setting], Mapping = Profiles.Mapping.NotOffered, Note = "The drive has no parameter for it." }).ToList());
        return lines;
    }

    private static SheetLine Planned(SheetLine line, DriveProfile profile, DriveSize size, SettingSet plan, ref ParameterValues working, ref ParameterValues standing)
    {
        var parameter = line.Parameter!;
        switch (SettingCodec.Encode(new Surroundings(profile, size, working), parameter, size, plan))
        {
            case Encoding.Value value:
                var shows = line.Before is null ? null : standing[parameter.Number];
                var reset = shows == line.Before?.Raw ? null : $"it shows {DisplayText.Shown(parameter, shows!.Value, standing).Text} once {parameter.DefaultFrom?.Parameter} is entered";
                (working, standing) = (profile.Written(parameter, value.Raw, size, working), profile.Written(parameter, value.Raw, size, standing));
                var unit = DisplayText.Unit(parameter, working);
                return line with
                {
                    Mapping = value.Mapping,
                    Fit = value.Fit,
                    Raw = value.Raw,
                    Display = DisplayText.Of(parameter, value.Raw, working),
                    Unit = unit,
                    Changed = shows != value.Raw || !string.Equals(unit, line.BeforeUnit, StringComparison.Ordinal),
                    Note = string.Join("; ", new[] { value.Note, reset }.OfType<string>()) is { Length: > 0 } said ? said : null,
                };
            case Encoding.Undecided undecided:
                return line with { Mapping = Mapping.NeedsChoice, Unit = DisplayText.Unit(parameter, working), Note = undecided.Why };
            default:
                throw new InvalidOperationException("Every outcome is told apart.");
        }
    }

    private static SheetLine Untouched(SheetLine line, ParameterValues standing) => line with
    {
        Raw = line.Before is null ? null : standing[line.Parameter!.Number],
        Display = line.Before is null ? null : DisplayText.Of(line.Parameter!, standing[line.Parameter!.Number]!.Value, standing),
        Unit = DisplayText.Unit(line.Parameter!, standing),
        Note = line.Before is null || standing[line.Parameter!.Number] == line.Before.Raw ? null : $"{line.Parameter!.DefaultFrom?.Parameter} sets it to this",
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
