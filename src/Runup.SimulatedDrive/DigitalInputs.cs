using Runup.Settings;

namespace Runup.SimulatedDrive;

/// <summary>The digital inputs of a drive, each off until somebody puts voltage on it.</summary>
internal sealed class DigitalInputs
{
    private static readonly Setting[] Functions =
        [Setting.DigitalInput1, Setting.DigitalInput2, Setting.DigitalInput3, Setting.DigitalInput4, Setting.DigitalInput5, Setting.DigitalInput6];

    private readonly bool[] on = new bool[Functions.Length];

    internal static int Count => Functions.Length;

    /// <summary>What an input is for, by the settings at work; null where it is for nothing.</summary>
    internal static string? FunctionOf(int number, SettingSet settings) => settings.Choice(Functions[number - 1]) is { } function and not "none" ? function : null;

    internal void Put(int number, bool voltage) => on[number - 1] = voltage;

    /// <summary>Whether there is voltage on an input of this function.</summary>
    internal bool Ask(string function, SettingSet settings) =>
        Enumerable.Range(1, Count).Any(n => on[n - 1] && string.Equals(FunctionOf(n, settings), function, StringComparison.Ordinal));
}
