using System.Globalization;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Files.Tests.Profiles;

/// <summary>Hand-written cases of <c>data/cases</c>: lines of cells without quotes.</summary>
internal static class Cases
{
    internal static IEnumerable<string[]> Rows(string name) =>
        File.ReadLines(Path.Combine(Drives.Root, "data", "cases", name + ".csv")).Where(l => !l.StartsWith('#')).Skip(1).Select(l => l.Split(','));

    internal static SettingSet Plan(string text) => text.Split(';').Select(p => p.Split('=')).Aggregate(SettingSet.Empty, (plan, pair) =>
    {
        var setting = Setting.Find(pair[0])!;
        return setting.Form is SettingForm.Numeric n ? plan.With(setting, double.Parse(pair[1], CultureInfo.InvariantCulture) * n.SiPerUnit) : plan.With(setting, pair[1]);
    });

    internal static ushort[] Words(string text) => [.. text.Split(' ').Select(w => ushort.Parse(w, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture))];

    /// <summary>Registers as answered, by address: <c>first address: words | ...</c>.</summary>
    internal static Dictionary<int, ushort> Registers(string text) => text.Split(" | ").Select(t => t.Split(": ")).SelectMany(part => Words(part[1]).Select((word, i) => (Words(part[0])[0] + i, word))).ToDictionary(p => p.Item1, p => p.word);

    /// <summary>The request that writes words, as the cases print it.</summary>
    internal static string Pdu(ushort register, IReadOnlyList<ushort> words) => words.Count == 1
        ? $"06 {register:X4} {words[0]:X4}"
        : $"10 {register:X4} {words.Count:X4} {2 * words.Count:X2} {string.Join(' ', words.Select(w => w.ToString("X4", CultureInfo.InvariantCulture)))}";

    internal static string Pdu(Parameter parameter, long raw) => Pdu(parameter.Register, RegisterImage.Words(parameter, raw));
}
