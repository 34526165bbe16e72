using System.Globalization;
using System.Text;

namespace Runup.Outside.Tests.Files;

/// <summary>Electronic data sheets as chance writes them: every kind of object, type, limit, number and spelling that CiA 306 knows.</summary>
internal sealed class RandomDataSheet
{
    // Data types of CiA 301 with their bits and signs; strings, reals and long integers are there to be left out.
    private static readonly (int Code, int Bits, bool Signed)[] Types =
        [(1, 1, false), (2, 8, true), (3, 16, true), (4, 32, true), (5, 8, false), (6, 16, false), (7, 32, false), (0x10, 24, true), (0x16, 24, false), (8, 0, false), (9, 0, false), (0x0F, 0, false), (0x15, 0, true), (0x1B, 0, false)];

    private static readonly string[] Words = ["Ramp", "time", "motor", "current", "limit", "speed", "fixed", "frequency", "lowest", "highest", "level", "action"];

    private readonly Random random;
    private readonly StringBuilder text = new();

    private RandomDataSheet(int seed) => random = new Random(seed);

    internal static string Of(int seed)
    {
        var sheet = new RandomDataSheet(seed);
        sheet.Write();
        return seed % 3 == 0 ? sheet.text.ToString().Replace("\n", "\r\n", StringComparison.Ordinal) : sheet.text.ToString();
    }

    private void Write()
    {
        Section("FileInfo");
        Key("FileName", "chance.eds");
        Section("DeviceInfo");
        Key("VendorName", "Invented = make");
        if (Chance(3))
        {
            Section("DeviceComissioning");
            Key("NodeID", Number(random.Next(1, 128)));
        }

        var indexes = Enumerable.Range(0, random.Next(3, 25)).Select(_ => random.Next(4) == 0 ? random.Next(0x6000, 0x7000) : random.Next(0x2000, 0x6000)).Distinct().ToList();
        foreach (var index in indexes)
        {
            Object(index.ToString(Chance(2) ? "X4" : "x4", CultureInfo.InvariantCulture));
        }
    }

    private void Object(string index)
    {
        switch (random.Next(5))
        {
            case 0:
                Record(index);
                break;
            case 1:
                Compact(index);
                break;
            default:
                Section(index);
                Variable();
                break;
        }
    }

    private void Record(string index)
    {
        var subs = Enumerable.Range(1, random.Next(1, 20)).Where(_ => random.Next(4) > 0).ToList();
        Section(index);
        Key("ParameterName", Name());
        Key("ObjectType", Chance(2) ? "0x8" : "0x9");
        Key("SubNumber", Number(subs.Count + 1));
        Section(index + "sub0");
        Key("ParameterName", "Highest sub-index");
        Key("DataType", "0x0005");
        Key("AccessType", "ro");
        foreach (var sub in subs)
        {
            Section(index + (Chance(2) ? "sub" : "Sub") + sub.ToString(Chance(2) ? "X" : "x", CultureInfo.InvariantCulture));
            Variable();
        }
    }

    private void Compact(string index)
    {
        var count = random.Next(1, 30);
        Section(index);
        Key("ObjectType", "8");
        Variable();
        Key("CompactSubObj", Number(count));
        if (Chance(2))
        {
            Section(index + "Name");
            var named = Enumerable.Range(1, count).Where(_ => Chance(2)).ToList();
            Key("NrOfEntries", Number(named.Count));
            named.ForEach(n => Key(n.ToString(CultureInfo.InvariantCulture), Name()));
        }

        if (Chance(3))
        {
            Section(index + "sub" + random.Next(1, count + 1).ToString("X", CultureInfo.InvariantCulture));
            Variable();
        }
    }

    private void Variable()
    {
        var (code, bits, signed) = Types[random.Next(Types.Length)];
        Key("ParameterName", Name());
        Key("DataType", Chance(3) ? code.ToString(CultureInfo.InvariantCulture) : "0x" + code.ToString("X4", CultureInfo.InvariantCulture));
        if (!Chance(6))
        {
            Key("AccessType", Cased(new[] { "ro", "wo", "rw", "rwr", "rww", "const" }[random.Next(6)]));
        }

        if (bits == 0)
        {
            return;
        }

        foreach (var key in new[] { "LowLimit", "HighLimit", "DefaultValue" }.Where(_ => !Chance(4)))
        {
            Key(key, Chance(12) ? "" : Value(bits, signed));
        }

        if (Chance(5))
        {
            Key("DefaultValue2", "0");
        }
    }

    private string Value(int bits, bool signed)
    {
        var raw = random.NextInt64(0, 1L << bits);
        if (signed && Chance(2))
        {
            return Number(raw < 1L << (bits - 1) ? raw : raw - (1L << bits));
        }

        var number = Number(raw);
        return Chance(15) ? (Chance(2) ? $"$NODEID+{Number(random.Next(256))}" : $"{Number(random.Next(256))} + $NodeID") : number;
    }

    private string Number(long value)
    {
        var size = Math.Abs(value);
        var written = random.Next(3) switch
        {
            0 => size.ToString(CultureInfo.InvariantCulture),
            1 => "0x" + size.ToString(Chance(2) ? "X" : "x4", CultureInfo.InvariantCulture),
            _ => size == 0 ? "0" : "0" + Convert.ToString(size, 8),
        };
        return value < 0 ? "-" + written : written;
    }

    private string Name() => string.Join(' ', Enumerable.Range(0, random.Next(1, 4)).Select(_ => Words[random.Next(Words.Length)])) + (Chance(4) ? " = " + random.Next(9) : "");

    private void Section(string name) => text.Append('\n').Append(Chance(5) ? "; remark [not] a = section\n" : "").Append('[').Append(name).Append("]\n");

    private void Key(string key, string value) =>
        text.Append(Chance(4) ? Cased(key) : key).Append(Chance(4) ? " = " : "=").Append(value).Append(Chance(8) ? " ; remark" : "").Append('\n');

    private string Cased(string word) => random.Next(3) switch { 0 => word, 1 => word.ToUpperInvariant(), _ => word.ToLowerInvariant() };

    private bool Chance(int of) => random.Next(of) == 0;
}
