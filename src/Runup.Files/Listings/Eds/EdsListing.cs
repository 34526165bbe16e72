using System.Globalization;
using Runup.Profiles;

namespace Runup.Files.Listings.Eds;

/// <summary>Reads the parameters of a drive from an electronic data sheet after CiA 306 (EDS, or DCF of a configured node).</summary>
internal sealed class EdsListing
{
    private static readonly string[] Lists = ["MandatoryObjects", "OptionalObjects", "ManufacturerObjects"];

    private static readonly string[] Known = ["FileInfo", "DeviceInfo", "DummyUsage", "Comments", "DeviceComissioning", "DeviceCommissioning", "SupportedModules", "DynamicChannels", "Tools", .. Lists];

    private readonly EdsText text;
    private readonly Problems cautions;
    private readonly long? node;
    private readonly List<ListedParameter> rows = [];

    private EdsListing(EdsText text, Problems cautions)
    {
        this.text = text;
        this.cautions = cautions;
        node = (text.Find("DeviceComissioning") ?? text.Find("DeviceCommissioning")) is { } commissioned ? EdsNumber.Read(commissioned["NodeID"]) : null;
    }

    internal static Listing? Read(string text, Problems problems, Problems cautions)
    {
        var before = problems.Count;
        var eds = EdsText.Read(text, problems);
        if (eds.Find("FileInfo") is null && eds.Find("DeviceInfo") is null)
        {
            problems.AddForFile("neither `[FileInfo]` nor `[DeviceInfo]`", "an electronic data sheet (EDS or DCF) after CiA 306 would do; a table may be given as .csv, .xlsx or .txt");
        }

        if (problems.Count > before)
        {
            return null;
        }

        var reader = new EdsListing(eds, cautions);
        reader.CheckLists();
        foreach (var section in eds.Sections)
        {
            reader.Take(section);
        }

        if (reader.rows.Count == 0)
        {
            problems.AddForFile("no object that is a parameter", "objects of up to 32 bits, such as `[6046sub1]`, would do");
            return null;
        }

        return new Listing(reader.rows, []);
    }

    // The lists at the head count and name the objects; what they name must be there.
    private void CheckLists()
    {
        foreach (var list in Lists.Select(text.Find).OfType<EdsSection>())
        {
            var entries = list.Keys.Where(k => k.All(char.IsAsciiDigit)).ToList();
            if (EdsNumber.Read(list["SupportedObjects"]) is { } count && count != entries.Count)
            {
                Say(list, "SupportedObjects", $"{count} objects are announced and {entries.Count} are named", "the number of objects that follow");
            }

            foreach (var entry in entries)
            {
                if (EdsNumber.Read(list[entry]) is not { } index || text.Find(index.ToString("X4", CultureInfo.InvariantCulture)) is null)
                {
                    Say(list, entry, $"there is no section for {Quote.Of(list[entry])}", "an index such as `0x6046` that has its section");
                }
            }
        }
    }

    private void Take(EdsSection section)
    {
        var name = section.Name;
        if (Index(name) is { } index)
        {
            TakeObject(section, index);
        }
        else if (name.IndexOf("sub", StringComparison.OrdinalIgnoreCase) == 4 && Index(name[..4]) is { } of)
        {
            if (!byte.TryParse(name.AsSpan(7), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var sub))
            {
                Say(section, "", "this names no sub-index", "a section such as `[6046sub1]`, the sub-index in hexadecimal, would do");
            }
            else if (sub > 0)
            {
                Add(section, of, sub, section["ParameterName"], text.Find(name[..4])?["ParameterName"] ?? "");
            }
        }
        else if (!IsKnown(name))
        {
            Say(section, "", "a section that CiA 306 does not have", "it is left out");
        }
    }

    // Names, values, denotations and links belong to an object; M1... to modules, which no drive's profile has.
    private static bool IsKnown(string name) =>
        Known.Contains(name, StringComparer.OrdinalIgnoreCase)
        || (name.Length > 4 && Index(name[..4]) is not null && name[4..].ToUpperInvariant() is "NAME" or "VALUE" or "DENOTATION" or "OBJECTLINKS")
        || (name.Length > 1 && name[0] is 'M' or 'm' && char.IsAsciiDigit(name[1]));

    private void TakeObject(EdsSection section, int index)
    {
        var title = section["ParameterName"];
        if (section["CompactSubObj"] is { Length: > 0 } compact)
        {
            TakeCompact(section, index, compact);
            return;
        }

        var kind = EdsNumber.Read(section["ObjectType"]) ?? 0x7;
        if (kind is 0x8 or 0x9 || section["SubNumber"].Length > 0)
        {
            var there = text.Sections.Count(s => s.Name.StartsWith(section.Name + "sub", StringComparison.OrdinalIgnoreCase));
            if (EdsNumber.Read(section["SubNumber"]) is { } count && count != there)
            {
                Say(section, "SubNumber", $"{count} sub-objects are announced and {there} are there", "the number of sections that follow");
            }

            return;
        }

        if (kind is 0x7)
        {
            Add(section, index, 0, title, "");
        }
    }

    private void TakeCompact(EdsSection section, int index, string compact)
    {
        if (EdsNumber.Read(compact) is not (>= 1 and <= 254 and var count))
        {
            Say(section, "CompactSubObj", Quote.Of(compact), "the number of sub-objects, from 1 to 254, would do");
            return;
        }

        var names = text.Find(section.Name + "Name");
        for (var sub = 1; sub <= count; sub++)
        {
            // A sub-object that has a section of its own says itself what it is.
            if (text.Find($"{section.Name}sub{sub.ToString("X", CultureInfo.InvariantCulture)}") is null)
            {
                var own = names?[sub.ToString(CultureInfo.InvariantCulture)] ?? "";
                Add(section, index, sub, own.Length > 0 ? own : $"{section["ParameterName"]} {sub}", section["ParameterName"]);
            }
        }
    }

    private void Add(EdsSection section, int index, int sub, string name, string group)
    {
        var number = index.ToString("X4", CultureInfo.InvariantCulture) + "h" + (sub > 0 ? ":" + sub.ToString("X", CultureInfo.InvariantCulture) : "");

        // Transport of the bus itself: no parameter of a drive.
        if (index is >= 0x1005 and <= 0x100F or >= 0x1012 and <= 0x1017 or >= 0x1019 and <= 0x1FFF)
        {
            return;
        }

        if (EdsNumber.Read(section["DataType"]) is not { } code || EdsType.Find(code) is not { } type)
        {
            Say(section, "DataType", section["DataType"].Length == 0 ? "it is missing" : Quote.Of(section["DataType"]), "a data type of CiA 301, such as `0x0007`, would do");
            return;
        }

        if (!type.IsParameter)
        {
            Say(section, "DataType", $"{type.Name}, which no register of up to 32 bits holds", "it is left out");
            return;
        }

        if (name.Length == 0)
        {
            Say(section, "ParameterName", "it is missing", "the object's name would do");
        }

        rows.Add(new ListedParameter
        {
            Number = number,
            Name = name,
            Group = group,
            Scale = 1,
            Low = Limit(section, "LowLimit", type) ?? (type.Bits == 1 ? 0 : null),
            High = Limit(section, "HighLimit", type) ?? (type.Bits == 1 ? 1 : null),
            Default = Limit(section, "DefaultValue", type),
            Access = Access(section),
            Width = type.Bits > 16 ? 32 : 16,
            Signed = type.Signed,
            Line = section.Line,
        });
    }

    private long? Limit(EdsSection section, string key, EdsType type)
    {
        if (section[key].Length == 0)
        {
            return null;
        }

        switch (EdsNumber.ReadValue(section[key], node))
        {
            case EdsValue.Number number:
                return type.Limit(number.Value);
            case EdsValue.ByNode:
                return null;
            default:
                Say(section, key, Quote.Of(section[key]), "a number, decimal, with 0x, or `$NODEID+0x600`, would do");
                return null;
        }
    }

    private ParameterAccess? Access(EdsSection section)
    {
        switch (section["AccessType"].ToUpperInvariant())
        {
            case "RO" or "CONST":
                return ParameterAccess.ReadOnly;
            case "WO":
                return ParameterAccess.Action;
            case "RW" or "RWR" or "RWW":
                return ParameterAccess.StoppedOnly;
            case "":
                return null;
            default:
                Say(section, "AccessType", Quote.Of(section["AccessType"]), "`ro`, `wo`, `rw`, `rwr`, `rww` or `const` would do");
                return null;
        }
    }

    private static int? Index(string name) =>
        name.Length == 4 && int.TryParse(name, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var index) ? index : null;

    private void Say(EdsSection section, string key, string found, string wouldDo) =>
        cautions.Add(EdsText.At(section.LineOf(key)), key.Length == 0 ? $"[{section.Name}]" : $"[{section.Name}] {key}", found, wouldDo);
}
