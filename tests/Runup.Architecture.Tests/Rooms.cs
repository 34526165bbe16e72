using System.Xml.Linq;

namespace Runup.Architecture.Tests;

/// <summary>The table of docs/architecture.md: what each room may use directly, rooms and packages.</summary>
internal static class Rooms
{
    internal static readonly IReadOnlyDictionary<string, string[]> MayUse = new Dictionary<string, string[]>(StringComparer.Ordinal)
    {
        ["Quantities"] = [],
        ["Settings"] = ["Quantities"],
        ["Engineering"] = ["Quantities", "MathNet.Numerics"],
        ["Dynamics"] = ["Engineering", "Settings"],
        ["Profiles"] = ["Engineering", "Settings"],
        ["Commissioning"] = ["Profiles", "Dynamics"],
        ["Modbus"] = ["System.IO.Ports"],
        ["DriveLink"] = ["Commissioning", "Modbus"],
        ["SimulatedDrive"] = ["Profiles", "Dynamics", "Modbus"],
        ["Files"] = ["Commissioning", "YamlDotNet", "CsvHelper", "DocumentFormat.OpenXml", "SkiaSharp", "SkiaSharp.NativeAssets.Linux.NoDependencies"],
        ["Store"] = ["Commissioning", "Microsoft.EntityFrameworkCore.Sqlite"],
        ["Reports"] = ["Commissioning", "QRCoder"],
        ["Cli"] = ["DriveLink", "SimulatedDrive", "Files", "Store", "Reports", "Spectre.Console", "Spectre.Console.Cli"],
    };

    internal static string Root { get; } = FindRoot();

    internal static IEnumerable<string> DirectReferences(string room)
    {
        var project = XDocument.Load(Path.Combine(Root, "src", $"Runup.{room}", $"Runup.{room}.csproj"));
        return project.Descendants()
            .Where(e => e.Name.LocalName is "ProjectReference" or "PackageReference")
            .Select(e => e.Attribute("Include")!.Value)
            .Select(path => path.EndsWith(".csproj", StringComparison.Ordinal) ? Path.GetFileNameWithoutExtension(path)["Runup.".Length..] : path);
    }

    internal static HashSet<string> Reachable(string room)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal) { room };
        var queue = new Queue<string>(seen);
        while (queue.TryDequeue(out var next))
        {
            foreach (var used in MayUse.GetValueOrDefault(next, []).Where(seen.Add))
            {
                queue.Enqueue(used);
            }
        }

        return seen;
    }

    private static string FindRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Runup.slnx")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("No Runup.slnx above the tests.");
        }

        return folder;
    }
}
