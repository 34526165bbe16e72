using Runup.Files.Yaml;
using Runup.Profiles;

namespace Runup.Files.Profiles;

/// <summary>Reads how the drive is commanded, read and told to store.</summary>
internal static class CommandReader
{
    internal static CommandInterface? Read(MapReader? map, ParameterRows parameters)
    {
        if (map is null)
        {
            return null;
        }

        var word = parameters.Find(map, "word", "the number of the parameter with the command word would do");
        var reference = parameters.Find(map, "reference", "the number of the parameter with the reference would do");
        var status = parameters.Find(map, "status", "the number of the parameter with the status word would do");
        var reverse = map.Whole("reverse-bit", 0, 15);
        var ramp = map.Flag("ramp-bits") ?? false;
        map.Done();
        Expect(map, "word", word, ParameterAccess.Command);
        Expect(map, "reference", reference, ParameterAccess.Command);
        Expect(map, "status", status, ParameterAccess.ReadOnly);
        if (reference is { Signed: false } && reverse is null)
        {
            map.Fault("reference", "a reference without sign, and no `reverse-bit`", "a signed reference, or the bit of the command word that reverses, would do");
        }

        return word is null || reference is null || status is null ? null : new CommandInterface(word, reference, status, reverse, ramp);
    }

    internal static IReadOnlyList<DriveReading> ReadReadings(MapReader? map, ParameterRows parameters)
    {
        var readings = new List<DriveReading>();
        foreach (var name in map is null ? [] : ReadingKindNames.All)
        {
            if (map!.Node(name) is { } node && ReadReading(map, node, ReadingKindNames.Find(name)!.Value, parameters) is { } reading)
            {
                Expect(map, name, reading.Parameter, ParameterAccess.ReadOnly);
                readings.Add(reading);
            }
        }

        map?.Done();
        return readings;
    }

    internal static StoreProcedure? ReadStore(MapReader? map, ParameterRows parameters)
    {
        if (map is null)
        {
            return null;
        }

        var parameter = parameters.Find(map, "parameter", "the number of the parameter that is written would do");
        var write = map.Text("write", "the value that is written would do");
        map.Done();
        Expect(map, "parameter", parameter, ParameterAccess.Action);
        if (write is null || parameter is null)
        {
            return null;
        }

        if (RawNumber.Parse(write) is not { } raw || !RegisterImage.Fits(parameter, raw))
        {
            map.Fault("write", $"{Quote.Of(write)} is not a value that its register holds", "a whole number, or hexadecimal digits with an h behind, would do");
            return null;
        }

        return new StoreProcedure(parameter.Number, raw);
    }

    private static DriveReading? ReadReading(MapReader map, YamlNode node, ReadingKind kind, ParameterRows parameters)
    {
        if (node is not YamlMap group)
        {
            return parameters.Find(node) is { } plain ? new DriveReading(kind, plain, Conversion.Direct.Instance) : null;
        }

        var reader = new MapReader(group, map.Problems);
        var parameter = parameters.Find(reader, "parameter", "the number of the parameter that shows it would do");
        var conversion = ConversionReader.Read(reader);
        reader.Done();
        if (conversion is Conversion.PartOf { Whole: Basis.SizeCurrent })
        {
            reader.Fault("part-of", "the size's current, by which no reading is worked out", "the number of a read-only row that holds the drive's rated current, with `default: by-size`, would do");
        }

        foreach (var number in conversion?.Reads ?? [])
        {
            _ = group.Find(ConversionNames.Key(conversion!)!) is { } named ? parameters.Find(named) : null;
        }

        return parameter is null || conversion is null ? null : new DriveReading(kind, parameter, conversion);
    }

    private static void Expect(MapReader map, string key, Parameter? parameter, ParameterAccess access)
    {
        if (parameter is not null && parameter.Access != access)
        {
            var wanted = ParameterReader.WordOf(access);
            map.Fault(key, $"parameter `{parameter.Number}` does not have `access: {wanted}`", $"give its row `access: {wanted}`, or name another parameter");
        }
    }
}
