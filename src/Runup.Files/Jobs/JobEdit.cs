using Runup.Files.Yaml;

namespace Runup.Files.Jobs;

/// <summary>Changes one value in a job file's text and leaves every other character alone, so that comments and order survive.</summary>
public static class JobEdit
{
    /// <summary>Sets the value of a key.</summary>
    /// <param name="text">The file's text, which may still be wrong elsewhere.</param>
    /// <param name="keyPath">The key, such as <c>motor.plate.output</c> or <c>operation.cycle[2].speed</c>.</param>
    /// <param name="value">The value as a person would write it, without quotes. Of a datum in braces, it replaces the value and leaves where it comes from.</param>
    /// <param name="name">What the file is called in problems.</param>
    /// <param name="folder">Folder of the files that the job names; null where it may name none.</param>
    public static JobEditing Set(string text, string keyPath, string value, string name = "job", string? folder = null)
    {
        var problems = new Problems(name);
        if (YamlTree.Read(text, problems) is not { } before || problems.Any)
        {
            return new JobEditing.Refused(problems.InOrder());
        }

        if (KeyPath.Parse(keyPath) is not { } path)
        {
            problems.Add(Place.First, keyPath, "it is no path of a key", "a path such as `motor.plate.output` would do");
            return new JobEditing.Refused(problems.InOrder());
        }

        if (Change(text, before, path, value.Trim(), problems) is not { } change)
        {
            return new JobEditing.Refused(problems.InOrder());
        }

        var edited = string.Concat(text.AsSpan(0, change.Start), change.Text, text.AsSpan(change.End));
        var faults = Verify(text, edited, path, value.Trim(), name, folder);
        return faults.Count == 0 ? new JobEditing.Changed(edited) : new JobEditing.Refused(faults);
    }

    private static SpanChange? Change(string text, YamlMap root, KeyPath path, string value, Problems problems)
    {
        if (value.Length == 0)
        {
            problems.Add(Place.First, path.ToString(), "nothing", "a value would do");
            return null;
        }

        switch (path.Find(root))
        {
            case null:
                return YamlInsertion.Make(text, root, path, value, problems);
            case YamlMap map when map.Find("value") is YamlScalar inner:
                return Replace(text, root, inner, value);
            case YamlScalar { IsEmpty: true, Place: var place } empty when place.Start == place.End:
                // A key without a value: put one behind its colon.
                var behindColon = text.IndexOf(':', empty.KeyPlace.End) + 1;
                return new SpanChange(behindColon, behindColon, " " + YamlWriting.Scalar(value, IsInFlow(root, empty)));
            case YamlScalar scalar:
                return Replace(text, root, scalar, value);
            case var other:
                problems.Add(other, other.Described, "set the keys in it one by one");
                return null;
        }
    }

    private static SpanChange Replace(string text, YamlMap root, YamlScalar scalar, string value)
    {
        var mark = text[scalar.Place.Start];
        char? quote = mark is '"' or '\'' ? mark : null;
        return new SpanChange(scalar.Place.Start, scalar.Place.End, YamlWriting.Scalar(value, IsInFlow(root, scalar), quote));
    }

    private static bool IsInFlow(YamlNode node, YamlNode target) => node switch
    {
        YamlMap map => map.Entries.Any(e => e.Value == target) ? map.IsFlow : map.Entries.Any(e => IsInFlow(e.Value, target)),
        YamlList list => list.Items.Contains(target) ? list.IsFlow : list.Items.Any(i => IsInFlow(i, target)),
        _ => false,
    };

    // The value must be there, nothing else may have changed, and no problem may have come that was not there before.
    private static IReadOnlyList<FileProblem> Verify(string before, string after, KeyPath path, string value, string name, string? folder)
    {
        var problems = new Problems(name);
        if (YamlTree.Read(after, problems) is not { } root || problems.Any)
        {
            return problems.InOrder();
        }

        var node = path.Find(root);
        if (((node as YamlMap)?.Find("value") ?? node) is not YamlScalar scalar || scalar.Text.Trim() != value)
        {
            problems.Add(Place.First, path.ToString(), $"{Quote.Of(value)} does not read back as written", "write it into the file by hand");
            return problems.InOrder();
        }

        var old = Faults(before, name, folder).Select(p => (p.Key, p.Found)).ToHashSet();
        return [.. Faults(after, name, folder).Where(p => !old.Contains((p.Key, p.Found)))];
    }

    private static IReadOnlyList<FileProblem> Faults(string text, string name, string? folder) =>
        JobFile.ReadText(text, name, folder) is JobReading.Faulty faulty ? faulty.Problems : [];
}

/// <summary>A piece of text and what comes in its place.</summary>
/// <param name="Start">First character that goes.</param>
/// <param name="End">The character after the last that goes.</param>
/// <param name="Text">What comes.</param>
internal readonly record struct SpanChange(int Start, int End, string Text);
