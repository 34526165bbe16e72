using Runup.Files.Tests.Profiles;
using Runup.Profiles;

namespace Runup.Files.Tests.Suggestion;

/// <summary>The two demo makes as lists without meaning: their profiles tell the truth.</summary>
public sealed class DemoMakesTests
{
    [Theory]
    [InlineData("tern")]
    [InlineData("osprey")]
    public void The_meanings_of_a_demo_make_are_suggested(string family)
    {
        var profile = Drives.Of(family);
        var rows = profile.Parameters.Select(p => Listed(p, profile.Sizes[0])).ToList();
        var truth = profile.Parameters.Where(p => p.Meaning is not null).ToDictionary(p => p.Number, p => (IReadOnlyList<string>)[.. p.Meaning!.Settings.Select(s => s.Name)]);
        var bars = Bars.Of(rows, truth);
        if (Environment.GetEnvironmentVariable("RUNUP_MISSES") is { } file)
        {
            File.WriteAllLines(file + family, [bars.ToString(), .. bars.Misses]);
        }

        bars.RightPart.ShouldBeGreaterThanOrEqualTo(0.9);
        bars.WrongPart.ShouldBeLessThanOrEqualTo(0.02);
    }

    private static ListedParameter Listed(Parameter parameter, DriveSize size)
    {
        var listed = new ListedParameter { Number = parameter.Number, Name = parameter.Name, Group = parameter.Group, Access = parameter.Access };
        return parameter.Form switch
        {
            ParameterForm.Numeric n => listed with
            {
                Scale = n.Scale.PerCount,
                Unit = n.Unit is ParameterUnit.Fixed f ? f.Symbol : "",
                Low = n.Scale.Value(n.Low),
                High = n.Scale.Value(n.High),
                Default = n.Scale.Value(size.DefaultOf(parameter.Number) ?? parameter.Default),
                Choices = n.Specials,
            },
            ParameterForm.Choices c => listed with { Choices = c.Values, Default = size.DefaultOf(parameter.Number) ?? parameter.Default },
            _ => throw new InvalidOperationException("Every form of parameter is told apart."),
        };
    }
}
