using System.Reflection;

namespace Runup.Architecture.Tests;

public sealed class PurityTests
{
    private static readonly string[] PureRooms = ["Quantities", "Settings", "Engineering", "Dynamics", "Profiles", "Commissioning"];

    private static readonly string[] Forbidden =
    [
        "File.", "Directory.", "DateTime.Now", "DateTime.UtcNow", "DateTimeOffset.Now", "DateTimeOffset.UtcNow", "Stopwatch.",
        "TimeProvider.System", "new Random(", "Random.Shared", "Guid.NewGuid", "Console.", "Environment.GetEnvironmentVariable", "Thread.Sleep", "Task.Delay(",
    ];

    public static TheoryData<string> Pure => [.. PureRooms];

    [Theory]
    [MemberData(nameof(Pure))]
    public void A_pure_room_touches_neither_files_clock_console_nor_chance(string room)
    {
        var offences =
            from file in Directory.EnumerateFiles(Path.Combine(Rooms.Root, "src", $"Runup.{room}"), "*.cs", SearchOption.AllDirectories)
            from line in File.ReadLines(file).Select((text, index) => (Text: text, Number: index + 1))
            where !line.Text.TrimStart().StartsWith("//", StringComparison.Ordinal)
            from word in Forbidden
            where Mentions(line.Text, word) && !WaitsByTheClockItWasGiven(line.Text, word)
            select $"{Path.GetRelativePath(Rooms.Root, file)}:{line.Number} {word}";
        offences.ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Pure))]
    public void A_pure_room_has_no_static_field_that_can_change(string room)
    {
        var offences =
            from type in Assembly.Load($"Runup.{room}").GetTypes()
            from field in type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
            where !field.IsInitOnly && !field.IsLiteral && !type.Name.Contains('<') && !field.Name.Contains('<')
            where !(type.Name is "Setting" && field.Name is "registered")
            select $"{type.FullName}.{field.Name}";
        offences.ShouldBeEmpty();
    }

    private static bool WaitsByTheClockItWasGiven(string text, string word) =>
        word.StartsWith("Task.Delay", StringComparison.Ordinal) && (text.Contains(", time, ", StringComparison.Ordinal) || text.Contains(".Time, ", StringComparison.Ordinal));

    private static bool Mentions(string text, string word)
    {
        for (var at = text.IndexOf(word, StringComparison.Ordinal); at >= 0; at = text.IndexOf(word, at + 1, StringComparison.Ordinal))
        {
            if (at == 0 || !char.IsLetterOrDigit(text[at - 1]))
            {
                return true;
            }
        }

        return false;
    }
}
