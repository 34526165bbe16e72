using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Runup.Profiles;
using Runup.Settings;
using static Runup.Files.Profiles.SchemaParts;

namespace Runup.Files.Profiles;

/// <summary>The JSON Schema of drive profiles, so that editors complete and check; a test holds it to the keys that the reader knows.</summary>
public static class ProfileSchema
{
    /// <summary>Where the shipped copy lies, from the checkout's root.</summary>
    public const string ShippedAt = "data/schema/runup-drive.schema.json";

    private const string Register = "^-?[0-9]+$|^[0-9A-Fa-f]{1,8}[hH]$";

    private static readonly JsonSerializerOptions Layout = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes the schema.</summary>
    public static string Write()
    {
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = $"urn:runup:drive-profile:{ProfileReader.Format}",
            ["title"] = "Runup drive profile",
            ["description"] = "One drive family: its sizes, its parameters, and what they mean in make-independent settings.",
        };
        foreach (var (name, value) in Top().ToList())
        {
            schema[name] = value?.DeepClone();
        }

        return schema.ToJsonString(Layout).ReplaceLineEndings("\n") + "\n";
    }

    private static JsonObject Top() => Object(
        ["drive-profile", "family", "ratings", "sizes", "groups"],
        ("drive-profile", new JsonObject { ["const"] = ProfileReader.Format, ["description"] = "Version of this format" }),
        ("family", Text("Name of the family in job files, such as tern")),
        ("title", Text("Name for people")),
        ("identity", Object(["vendor", "product", "revision"], ("vendor", Text("As the drive answers on the bus")), ("product", Text("Product code")), ("revision", Scalar("Revision")))),
        ("width", Width()),
        ("signed", Flag("Whether registers hold two's complement, where a row does not say otherwise")),
        ("word-order", Words("Order of the words of 32 bits, where a row does not say otherwise", "low-first", "high-first")),
        ("ratings", Map("What sizes of one voltage class have in common, by a name of your choice", Rating())),
        ("sizes", List("The sizes, small to large", Size())),
        ("regions", Map("Regions whose drives leave the factory with values of their own, the usual one first", Object([], ("defaults", OwnDefaults()), ("sizes", Map("Factory values of single sizes there, by size", OwnDefaults()))))),
        ("lists", Map("Choices that several rows share, by a name of your choice", Choices(label: true))),
        ("groups", List("Menus or groups, in the make's order", Object(["group", "parameters"], ("group", Text("Name of the menu or group")), ("parameters", List("Rows, in the make's order", Row()))))),
        ("store", Object(["parameter", "write"], ("parameter", Number("Parameter that is written to keep all values")), ("write", Scalar("Value that is written; hexadecimal with an h behind")))),
        ("command", Command()),
        ("readings", Readings()),
        ("trips", Map("Causes of the make's trip codes", Words("Cause", [.. Enum.GetValues<TripCause>().Select(c => c.Name())]), Register)));

    private static JsonObject Rating() => Object(
        ["supply", "overload-cycles", "peak", "overcurrent-trip", "overvoltage-trip", "overvoltage-control", "chopper", "undervoltage-trip", "switching-derating", "ambient-derating", "altitude-derating"],
        ("supply", Object(["lowest", "highest", "phases"], ("lowest", Text("Lowest nominal supply voltage")), ("highest", Text("Highest nominal supply voltage")), ("phases", new JsonObject { ["enum"] = new JsonArray(1, 3) }))),
        ("overload-cycles", Map("Overload cycles, by name; the normal one first", Object(["overload", "for", "every"], ("overload", Text("Of the continuous current")), ("for", Text("How long")), ("every", Text("Once in"))))),
        ("peak", Object(["overload", "of", "for"], ("overload", Text("Of the continuous current")), ("of", Text("Overload cycle")), ("for", Text("How long")))),
        ("overcurrent-trip", Object(["overload", "of"], ("overload", Text("Of the continuous current")), ("of", Text("Overload cycle")))),
        ("overvoltage-trip", Text("DC bus voltage")),
        ("overvoltage-control", Text("DC bus voltage at which deceleration is stretched")),
        ("chopper", Text("DC bus voltage at which the chopper switches on")),
        ("undervoltage-trip", Text("DC bus voltage")),
        ("switching-derating", Map("Continuous current at each switching frequency, rising", Text("Of the continuous current"))),
        ("ambient-derating", Derating("1 K")),
        ("altitude-derating", Derating("100 m")),
        ("rise-time", Text("Rise time of an edge of the output voltage")),
        ("short-circuit-rating", Text("Short-circuit current of the supply that the drive may stand behind, with the maker's fuses or breaker")));

    private static JsonObject Derating(string per) => Object(
        ["full-up-to", "loss", "per", "highest"],
        ("full-up-to", Text("Full current up to here")),
        ("loss", Text("So much less current")),
        ("per", Text($"for so much more, such as {per}")),
        ("highest", Text("Not permitted beyond")));

    private static JsonObject Size() => Object(
        ["size", "rating", "power", "currents", "bus"],
        ("size", Text("The make's name of the size")),
        ("rating", Text("One of the ratings")),
        ("power", Text("Motor power that the maker prints for it")),
        ("currents", Map("Continuous current of each overload cycle", Text("Current"))),
        ("bus", Text("Capacitance of the DC bus")),
        ("lowest-resistor", Text("Lowest braking resistance")),
        ("dc-choke", Text("DC choke, per cent of base impedance")),
        ("losses", Text("What it loses as heat at rated current")),
        ("defaults", OwnDefaults()),
        ("ranges", Map("Ranges of its own, by parameter", Object(["low", "high"], ("low", Scalar("As the display shows it")), ("high", Scalar("As the display shows it"))))));

    private static JsonObject OwnDefaults() => Map("Factory values of its own, by parameter", Scalar("As the display shows it"));

    private static JsonObject Row() => Object(
        ["number", "name", "default"],
        ("number", Number("The make's number or index")),
        ("name", Text("The name on the make's list")),
        ("register", new JsonObject { ["type"] = "integer", ["minimum"] = 0, ["maximum"] = ushort.MaxValue, ["description"] = "PDU address from 0; of 32 bits the lower; may be left out where it is the number" }),
        ("width", Width()),
        ("signed", Flag("Whether the register holds two's complement")),
        ("word-order", Words("Order of the words of 32 bits", "low-first", "high-first")),
        ("access", Words("When it may be written; stopped-only where nothing is said", [.. Enum.GetValues<ParameterAccess>().Select(ParameterReader.WordOf)])),
        ("volatile", Flag("Whether it is lost at power-off although it was stored")),
        ("needs-restart", Flag("Whether it acts only after the drive was off and on again")),
        ("after", List("Parameters that must be entered before it", Number("Number"))),
        ("scale", Scalar("Display value of one count, such as 0.1")),
        ("decimals", new JsonObject { ["type"] = "integer", ["minimum"] = 0, ["maximum"] = 9, ["description"] = "Decimals on the display, where the scale does not tell" }),
        ("unit", Unit()),
        ("low", Scalar("Lowest value, as the display shows it")),
        ("high", Scalar("Highest value, as the display shows it")),
        ("step", Scalar("From one value to the next, where it is more than one count")),
        ("not-below", Limit("What another parameter permits at least")),
        ("not-above", Limit("What another parameter permits at most")),
        ("shown-in", Words("How the display writes the digits, where not in decimal ones", "binary", "hexadecimal")),
        ("special", Choices(label: false)),
        ("choices", new JsonObject { ["anyOf"] = new JsonArray(Choices(label: true), Text("One of the lists")) }),
        ("default", new JsonObject { ["anyOf"] = new JsonArray(Scalar("Factory value as the display shows it; of choices the value in the register; or by-size"), Dependent()) }),
        ("resets", Flag("Whether a new value sets all whose default depends on it to that again")),
        ("bits", Map("Instead of means: bits that choose a setting each, by their place such as 0 or 4-5", Bits(), "^[0-9]+(-[0-9]+)?$")),
        ("means", new JsonObject { ["anyOf"] = new JsonArray(SettingName(), List("Settings that it chooses together", SettingName())) }),
        ("perhaps", new JsonObject { ["anyOf"] = new JsonArray(SettingName(), List("Settings that it may choose together", SettingName())), ["description"] = "What an import guessed; nothing is entered for it until it is called means" }),
        ("counted-over", Basis("A ramp: the frequency to which the drive counts from 0")),
        ("part-of", Basis("Of what the value is a part")),
        ("absolute-of", Basis("The setting is a part, the parameter an absolute value: the whole")),
        ("at-no-slip", Flag("A speed of the shaft at no slip, where the setting is a frequency")),
        ("below-synchronous", Flag("The rated slip in Hz, rpm or per cent, where the setting is the rated speed")),
        ("of-rated-slip", Flag("A slip in Hz, rpm or per cent, where the setting is a part of the rated slip")),
        ("speed-change-in", Number("A ramp as speed change over time, this is the speed: parameter with the time")),
        ("change-of", Number("A ramp as speed change over time, this is the time: parameter with the speed")));

    private static JsonObject Limit(string description) => new() { ["anyOf"] = new JsonArray(Number("Number of the parameter"), Dependent()), ["description"] = description };

    private static JsonObject Dependent()
    {
        var chosen = Object([], ("of", Number("Parameter that decides it")), ("times", Scalar("So many times what that says")), ("chosen-by", Number("Parameter whose choice decides it")));
        chosen["patternProperties"] = new JsonObject { [Register] = Scalar("Value for this choice, as the display shows it") };
        return chosen;
    }

    private static JsonObject Bits()
    {
        var bits = Object(["means"], ("means", SettingName()));
        bits["patternProperties"] = new JsonObject { [Register] = Scalar("Value of the setting, or no-counterpart") };
        return bits;
    }

    private static JsonObject Basis(string description) => new()
    {
        ["anyOf"] = new JsonArray(Number("Number of a parameter, or a quantity such as 50 Hz"), Object(["current"], ("current", Text("Overload cycle: the size's continuous current")))),
        ["description"] = description,
    };

    private static JsonObject Unit()
    {
        var chosen = Object(["chosen-by"], ("chosen-by", Number("Parameter that chooses the unit")));
        var own = Object(["unit"], ("unit", Text("Unit")), ("scale", Scalar("Display value of one count in this unit")), ("decimals", new JsonObject { ["type"] = "integer", ["minimum"] = 0, ["maximum"] = 9 }));
        chosen["patternProperties"] = new JsonObject { [Register] = new JsonObject { ["anyOf"] = new JsonArray(Text("Unit"), own) } };
        return new JsonObject { ["anyOf"] = new JsonArray(Text("Unit as the drive prints it"), chosen) };
    }

    private static JsonObject Command() => Object(
        ["word", "reference", "status"],
        ("word", Number("Parameter with the control word")),
        ("reference", Number("Parameter with the reference, in Hz or in rpm at no slip")),
        ("status", Number("Parameter with the status word")),
        ("reverse-bit", new JsonObject { ["type"] = "integer", ["minimum"] = 0, ["maximum"] = 15, ["description"] = "Bit of the control word that reverses; else the sign of the reference does" }),
        ("ramp-bits", Flag("Whether bits 4 to 6 must be set for the ramp to follow (velocity mode)")));

    private static JsonObject Readings() => Object([], [.. ReadingKindNames.All.Select(name => (name, Reading()))]);

    private static JsonObject Reading() => new()
    {
        ["anyOf"] = new JsonArray(
            Number("Parameter that shows it"),
            Object(["parameter"], [("parameter", Number("Parameter that shows it")), .. ConversionReader.Keys.Select(k => (k, ConversionReader.IsFlag(k) ? Flag("As in a row") : Number("As in a row")))])),
    };

    private static JsonObject Choices(bool label)
    {
        var full = Object(label ? ["label"] : [], ("label", Text("What the display shows")), ("is", new JsonObject { ["type"] = new JsonArray("string", "number", "array"), ["description"] = "What it stands for in the settings of means, or no-counterpart" }));
        return Map("By the value in the register", new JsonObject { ["anyOf"] = new JsonArray(Scalar("What the display shows"), full) }, Register);
    }

    private static JsonObject SettingName() => Words("A make-independent setting", [.. Setting.All.Select(s => s.Name)]);

    private static JsonObject Width() => new() { ["enum"] = new JsonArray(16, 32), ["description"] = "Bits" };
}
