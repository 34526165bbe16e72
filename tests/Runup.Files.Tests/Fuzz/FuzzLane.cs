using System.Diagnostics;
using FsCheck;
using FsCheck.Fluent;

namespace Runup.Files.Tests.Fuzz;

/// <summary>Holds a property for some inputs of chance, and with RUNUP_LONG for as many as its part of ten minutes takes.</summary>
internal static class FuzzLane
{
    /// <summary>The properties that share the ten minutes.</summary>
    internal const int Properties = 11;

    private const int EachRound = 200;

    private static readonly TimeSpan Long = TimeSpan.FromMinutes(10) / Properties;

    internal static void Hold<T>(Arbitrary<T> inputs, int quick, Action<T> holds)
    {
        var property = Prop.ForAll(inputs, holds);
        if (Environment.GetEnvironmentVariable("RUNUP_LONG") is null)
        {
            property.Check(Config.QuickThrowOnFailure.WithMaxTest(quick));
            return;
        }

        var clock = Stopwatch.StartNew();
        var rounds = 0;
        while (clock.Elapsed < Long)
        {
            property.Check(Config.QuickThrowOnFailure.WithMaxTest(EachRound));
            rounds++;
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{rounds * EachRound} inputs in {clock.Elapsed.TotalSeconds:0} s");
    }
}
